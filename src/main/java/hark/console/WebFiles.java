package hark.console;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.jetty.server.handler.ContextHandler;
import org.eclipse.jetty.server.handler.ResourceHandler;
import org.eclipse.jetty.util.resource.Resource;
import org.eclipse.jetty.util.resource.ResourceFactory;

/** The page's own files and the library it uses, from the class path or from a folder. */
final class WebFiles {
  private static final Pattern IMPORT_MAP =
      Pattern.compile("<script type=\"importmap\">(.*?)</script>", Pattern.DOTALL);

  private WebFiles() {}

  static ContextHandler page(ResourceFactory resources, Optional<Path> folder) {
    Resource web =
        folder
            .map(resources::newResource)
            .orElseGet(() -> resources.newClassLoaderResource("web/"));
    return files("/", web);
  }

  /** lit-html of its WebJar, under a path without its version. */
  static ContextHandler litHtml(ResourceFactory resources) {
    String version = version("org.webjars.npm", "lit-html");
    String place = "META-INF/resources/webjars/lit-html/" + version + "/";
    return files("/lib/lit-html", resources.newClassLoaderResource(place));
  }

  /** The hash by which the content policy lets the page's import map through. */
  static String importMapHash(Optional<Path> folder) {
    Matcher map = IMPORT_MAP.matcher(index(folder));
    if (!map.find()) {
      throw new IllegalStateException("web/index.html has no import map");
    }
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256")
              .digest(map.group(1).getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String index(Optional<Path> folder) {
    try {
      return folder.isPresent()
          ? java.nio.file.Files.readString(folder.get().resolve("index.html"))
          : new String(bytes("web/index.html"), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException("the page cannot be read", e);
    }
  }

  private static String version(String group, String artifact) {
    Properties properties = new Properties();
    String place = "META-INF/maven/" + group + "/" + artifact + "/pom.properties";
    try {
      properties.load(new java.io.ByteArrayInputStream(bytes(place)));
    } catch (IOException e) {
      throw new IllegalStateException("the library " + artifact + " is not in this program", e);
    }
    return properties.getProperty("version");
  }

  private static byte[] bytes(String place) throws IOException {
    try (InputStream in = WebFiles.class.getClassLoader().getResourceAsStream(place)) {
      if (in == null) {
        throw new IOException("no " + place + " on the class path");
      }
      return in.readAllBytes();
    }
  }

  private static ContextHandler files(String path, Resource base) {
    ResourceHandler files = new ResourceHandler();
    files.setBaseResource(base);
    files.setDirAllowed(false);
    files.setEtags(true);
    files.setCacheControl("no-cache");
    ContextHandler context = new ContextHandler(path);
    context.setHandler(files);
    return context;
  }
}
