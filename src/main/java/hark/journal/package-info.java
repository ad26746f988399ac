/**
 * The durable record: entries with who and when, on disk, in one SQLite file that only grows.
 *
 * <p>Entry type: {@link hark.journal.Journal}. {@code append} returns when the entry is on disk;
 * numbers rise from 1; rows are chained by hash, so that a changed row shows. A cut tail does not
 * show in the file itself: keep the head elsewhere.
 *
 * <p>Nothing here is pure but {@code Chain}. Not in this edition: export, import, backup.
 */
package hark.journal;
