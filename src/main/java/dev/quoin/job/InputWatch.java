package dev.quoin.job;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** Waits until a file is saved in one of some folders. Folders in them are not looked into. */
public final class InputWatch implements AutoCloseable {
    /** Programs save in several steps; when nothing more has happened for so long, they are done. */
    private static final long QUIET_MS = 30;

    private final WatchService service;
    private final Map<Path, WatchKey> folders = new HashMap<>();

    public InputWatch() throws IOException {
        service = FileSystems.getDefault().newWatchService();
    }

    /** Watches these folders too; what happens there from now on counts. Those that are not there are passed over. */
    public void add(Collection<Path> more) throws IOException {
        for (Path folder : more) {
            Path path = folder.toAbsolutePath().normalize();
            if (Files.isDirectory(path) && !folders.containsKey(path)) {
                WatchKey key = path.register(
                        service,
                        StandardWatchEventKinds.ENTRY_CREATE,
                        StandardWatchEventKinds.ENTRY_MODIFY,
                        StandardWatchEventKinds.ENTRY_DELETE);
                folders.put(path, key);
            }
        }
    }

    /** Waits until a file has been saved, and the saving is over. */
    public void await() throws InterruptedException {
        boolean saved = false;
        while (!saved) {
            saved = isSave(service.take());
        }
        WatchKey next = service.poll(QUIET_MS, TimeUnit.MILLISECONDS);
        while (next != null) {
            isSave(next);
            next = service.poll(QUIET_MS, TimeUnit.MILLISECONDS);
        }
    }

    /** Whether a file was among what happened; folders come and go, and programs leave hidden files for a moment. */
    private static boolean isSave(WatchKey key) {
        boolean saved = false;
        for (WatchEvent<?> event : key.pollEvents()) {
            if (event.context() instanceof Path name && !name.toString().startsWith(".")) {
                saved |= Files.isRegularFile(((Path) key.watchable()).resolve(name));
            }
        }
        key.reset();
        return saved;
    }

    @Override
    public void close() throws IOException {
        service.close();
    }
}
