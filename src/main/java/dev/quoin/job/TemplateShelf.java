package dev.quoin.job;

import dev.quoin.art.Template;
import dev.quoin.art.TemplateCompiler;
import dev.quoin.drawing.SvgDrawing;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The templates of a job, each read and compiled once. */
final class TemplateShelf {
    private final InputFiles files;
    private final Path folder;
    private final TemplateCompiler compiler;
    private final Map<Path, Optional<Template>> compiled = new HashMap<>();

    /**
     * An empty shelf.
     *
     * @param folder the job's, where templates find drawings that they show
     */
    TemplateShelf(InputFiles files, Path folder, TemplateCompiler compiler) {
        this.files = files;
        this.folder = folder;
        this.compiler = compiler;
    }

    /**
     * The template of a file; its problems are told once.
     *
     * @param namedAt the cell that names it; empty if the job does
     * @throws IOException if the job names it and it cannot be read
     */
    Optional<Template> take(Path file, Optional<Place> namedAt, Problems problems) throws IOException {
        Optional<Template> known = compiled.get(file);
        if (known == null) {
            known = files.find(file, "template", namedAt, problems).flatMap(bytes -> compile(file, bytes, problems));
            compiled.put(file, known);
        }
        return known;
    }

    /** How the run's files name it. */
    String nameOf(Path file) {
        return files.nameOf(file);
    }

    private Optional<Template> compile(Path file, byte[] bytes, Problems problems) {
        String name = file.getFileName().toString();
        JobArt art = new JobArt(files, file.toAbsolutePath().getParent(), folder);
        return SvgDrawing.read(name, bytes, art, problems)
                .flatMap(drawing -> compiler.compile(name, drawing, problems));
    }
}
