package wetside.browser;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Orders to a Chromium and what it tells, over its DevTools protocol: JSON on a web socket. */
final class Wire implements WebSocket.Listener, AutoCloseable {
    private static final int PATIENCE_S = 60;
    private static final JsonMapper JSON = new JsonMapper();

    private final AtomicInteger last = new AtomicInteger();
    private final Map<Integer, CompletableFuture<JsonNode>> asked = new ConcurrentHashMap<>();
    private final Map<String, BiConsumer<String, JsonNode>> listeners = new ConcurrentHashMap<>();
    private final StringBuilder begun = new StringBuilder();
    private final WebSocket socket;
    private CompletableFuture<WebSocket> sent;

    Wire(URI address) {
        socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(address, this)
                .join();
        sent = CompletableFuture.completedFuture(socket);
    }

    /** What a page tells unasked: name and content. */
    void listen(String session, BiConsumer<String, JsonNode> listener) {
        listeners.put(session, listener);
    }

    /** @param session of a page, "" for the browser itself */
    JsonNode ask(String session, String method, Map<String, ?> parameters) {
        int id = last.incrementAndGet();
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        asked.put(id, answer);
        String order = JSON.writeValueAsString(
                session.isEmpty()
                        ? Map.of("id", id, "method", method, "params", parameters)
                        : Map.of("id", id, "method", method, "params", parameters, "sessionId", session));
        synchronized (this) {
            sent = sent.thenCompose(s -> s.sendText(order, true));
        }
        try {
            return answer.get(PATIENCE_S, TimeUnit.SECONDS);
        } catch (TimeoutException e) {
            throw new IllegalStateException("Chromium did not answer " + method, e);
        } catch (ExecutionException e) {
            throw new IllegalStateException(method + ": " + e.getCause().getMessage(), e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean complete) {
        begun.append(data);
        if (complete) {
            JsonNode message = JSON.readTree(begun.toString());
            begun.setLength(0);
            take(message);
        }
        from.request(1);
        return null;
    }

    private void take(JsonNode message) {
        if (!message.has("id")) {
            BiConsumer<String, JsonNode> listener =
                    listeners.get(message.path("sessionId").asString(""));
            if (listener != null) {
                listener.accept(message.path("method").asString(""), message.path("params"));
            }
            return;
        }
        CompletableFuture<JsonNode> answer = asked.remove(message.path("id").asInt());
        if (answer != null && message.has("error")) {
            answer.completeExceptionally(
                    new IllegalStateException(message.path("error").toString()));
        } else if (answer != null) {
            answer.complete(message.path("result"));
        }
    }

    @Override
    public void close() {
        socket.abort();
    }
}
