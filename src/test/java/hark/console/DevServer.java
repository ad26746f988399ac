package hark.console;

public final class DevServer {
  public static void main(String[] a) throws Exception {
    ConsoleServer s =
        ConsoleServer.start(
            new FixtureModel(true),
            ConsoleSettings.of("127.0.0.1", 8499)
                .withWebFolder(java.nio.file.Path.of("web").toAbsolutePath()));
    System.out.println(s.address());
  }
}
