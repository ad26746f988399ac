/**
 * Everything written for people, and the JSON of an assessment.
 *
 * <p>Entry types: {@link hark.document.Headline} (the sentence said aloud, one for terminal and
 * page), {@link hark.document.Brief}, {@link hark.document.RunbookEntry}, {@link
 * hark.document.CasePage}, {@link hark.document.AssessmentJson}. All are pure: values in, text out;
 * they compute nothing of the domain, they only choose words that follow its numbers. All times are
 * UTC.
 *
 * <p>Not in this edition: handover and requests for outside ears as documents of their own.
 */
package hark.document;
