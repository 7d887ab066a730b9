package rungwork.kernel;

import io.github.spencerpark.jupyter.channels.JupyterSocket;
import io.github.spencerpark.jupyter.kernel.KernelConnectionProperties;
import io.github.spencerpark.jupyter.messages.HMACGenerator;
import io.github.spencerpark.jupyter.messages.Header;
import io.github.spencerpark.jupyter.messages.Message;
import io.github.spencerpark.jupyter.messages.MessageType;
import io.github.spencerpark.jupyter.messages.request.CompleteRequest;
import io.github.spencerpark.jupyter.messages.request.ExecuteRequest;
import io.github.spencerpark.jupyter.messages.request.KernelInfoRequest;
import io.github.spencerpark.jupyter.messages.request.ShutdownRequest;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.logging.Logger;
import org.zeromq.SocketType;
import org.zeromq.ZMQ;

/**
 * Plays a client that asks a kernel of this process for the usual things and shuts it down, so that
 * every class that a start needs has been loaded once.
 */
final class Rehearsal {
  private static final int PORTS = 5;
  private static final int ANSWER_WITHIN_MILLISECONDS = 60_000;

  private final KernelConnectionProperties places;
  private final List<String> cells;

  private Rehearsal(KernelConnectionProperties places, List<String> cells) {
    this.places = places;
    this.cells = List.copyOf(cells);
  }

  /**
   * Begins to play the client, in a thread of its own, for a kernel that is served next.
   *
   * @param cells what the client runs
   * @return the connection file to serve at
   */
  static Path begin(List<String> cells) throws IOException {
    Rehearsal rehearsal = new Rehearsal(freePlaces(), cells);
    Path file = Files.createTempFile("rehearsal", ".json");
    file.toFile().deleteOnExit();
    Files.writeString(file, rehearsal.places.toJsonString());
    Wire.daemon("rehearsal", rehearsal::play).start();
    return file;
  }

  private static KernelConnectionProperties freePlaces() throws IOException {
    InetAddress here = InetAddress.getByName("127.0.0.1");
    List<ServerSocket> held = new ArrayList<>();
    for (int i = 0; i < PORTS; i++) {
      held.add(new ServerSocket(0, 1, here));
    }
    List<Integer> ports = held.stream().map(ServerSocket::getLocalPort).toList();
    for (ServerSocket each : held) {
      each.close();
    }
    return new KernelConnectionProperties(
        here.getHostAddress(),
        ports.get(0),
        ports.get(1),
        ports.get(2),
        ports.get(3),
        ports.get(4),
        "tcp",
        "hmac-sha256",
        UUID.randomUUID().toString());
  }

  private void play() {
    ZMQ.Context context = ZMQ.context(1);
    try (Asking asking = new Asking(context, places.createHMACGenerator())) {
      asking.bind(places);
      asking.ask(KernelInfoRequest.MESSAGE_TYPE, new KernelInfoRequest());
      for (String cell : cells) {
        asking.ask(
            ExecuteRequest.MESSAGE_TYPE,
            new ExecuteRequest(cell, false, true, Map.of(), false, false));
        asking.ask(CompleteRequest.MESSAGE_TYPE, new CompleteRequest(cell, cell.length()));
      }
      asking.ask(ShutdownRequest.MESSAGE_TYPE, ShutdownRequest.SHUTDOWN);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    } finally {
      context.close();
    }
  }

  /** The client's end of the shell socket. */
  private static final class Asking extends JupyterSocket {
    private final ZMQ.Poller poller;

    private Asking(ZMQ.Context context, HMACGenerator key) {
      super(context, SocketType.DEALER, key, Logger.getLogger("rehearsal"));
      poller = context.poller(1);
      poller.register(this, ZMQ.Poller.POLLIN);
    }

    @Override
    public void bind(KernelConnectionProperties at) {
      connect(formatAddress(at.getTransport(), at.getIp(), at.getShellPort()));
    }

    private <T> void ask(MessageType<T> type, T content) {
      sendMessage(new Message<>(new Header<>("rehearsal", type), content));
      boolean more = poller.poll(ANSWER_WITHIN_MILLISECONDS) > 0;
      while (more) { // what it says does not matter here
        recv();
        more = hasReceiveMore();
      }
    }
  }
}
