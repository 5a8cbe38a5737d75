package club.yearline.testing;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A line to the application that can be cut: a port that passes everything on until then. What a
 * browser emulates for its pages does not reach its service workers; this does.
 */
public final class Line implements AutoCloseable {

  private final int to;
  private final ServerSocket ear;
  private final Set<Socket> open = ConcurrentHashMap.newKeySet();
  private volatile boolean cut;

  /** A line to a port of this machine. */
  public Line(int to) {
    this.to = to;
    try {
      this.ear = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    start(this::listen);
  }

  /** The address of a path by this line. */
  public String at(String path) {
    return "http://localhost:" + ear.getLocalPort() + path;
  }

  /** Cuts the line: whatever comes is dropped. */
  public void cut() {
    cut = true;
    open.forEach(Line::drop);
  }

  /** Joins it again. */
  public void join() {
    cut = false;
  }

  private void listen() {
    while (!ear.isClosed()) {
      try {
        Socket near = ear.accept();
        if (cut) {
          drop(near);
        } else {
          pass(near, new Socket(InetAddress.getLoopbackAddress(), to));
        }
      } catch (IOException closed) {
        // Asked again at the head of the loop.
      }
    }
  }

  private void pass(Socket near, Socket far) {
    open.add(near);
    open.add(far);
    start(() -> copy(near, far));
    start(() -> copy(far, near));
  }

  private void copy(Socket from, Socket into) {
    try (InputStream in = from.getInputStream();
        OutputStream out = into.getOutputStream()) {
      in.transferTo(out);
    } catch (IOException ended) {
      // Either side may hang up, and so does a cut.
    } finally {
      drop(from);
      drop(into);
      open.remove(from);
      open.remove(into);
    }
  }

  private static void drop(Socket socket) {
    try {
      socket.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void start(Runnable work) {
    Thread thread = new Thread(work, "line");
    thread.setDaemon(true);
    thread.start();
  }

  @Override
  public void close() {
    cut();
    try {
      ear.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
