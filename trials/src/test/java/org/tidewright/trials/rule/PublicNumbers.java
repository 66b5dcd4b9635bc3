package org.tidewright.trials.rule;

import com.sun.source.doctree.BlockTagTree;
import com.sun.source.doctree.DocCommentTree;
import com.sun.source.tree.AnnotatedTypeTree;
import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.ArrayTypeTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.PrimitiveTypeTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.lang.model.element.Modifier;
import javax.lang.model.type.TypeKind;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.jspecify.annotations.Nullable;

/**
 * The numbers a folder of sources offers to others, read with the JDK's own parser: parameters, results, constants and
 * record components of type double or array of double, of all that is public. What overrides another's method need not
 * say its units again: they stand where the method was first declared.
 */
final class PublicNumbers {
    private final List<Offence> withoutUnit = new ArrayList<>();
    private final List<Function> functions = new ArrayList<>();

    private PublicNumbers() {}

    /**
     * A public method with a body and a number for its result.
     *
     * @param itself as an offence without a complaint yet
     * @param isStatic whether it belongs to the class rather than to an object
     * @param tags names of the block tags of its own comment that say something
     * @param typeTags the same of the comments of the types around it
     */
    record Function(Offence itself, boolean isStatic, Set<String> tags, Set<String> typeTags) {
        Offence lacks(String tag) {
            return new Offence(itself.file(), itself.line(), itself.what() + ": no @" + tag);
        }
    }

    static PublicNumbers in(List<Path> files) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        PublicNumbers numbers = new PublicNumbers();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(files));
            DocTrees trees = DocTrees.instance(task);
            for (CompilationUnitTree file : task.parse()) {
                numbers.new Reader(trees, file).scan(file, null);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return numbers;
    }

    List<Offence> withoutUnit() {
        return withoutUnit;
    }

    List<Function> functions() {
        return functions;
    }

    private final class Reader extends TreePathScanner<@Nullable Void, @Nullable Void> {
        private final DocTrees trees;
        private final CompilationUnitTree file;
        private final Deque<ClassTree> around = new ArrayDeque<>();

        Reader(DocTrees trees, CompilationUnitTree file) {
            this.trees = trees;
            this.file = file;
        }

        @Override
        public @Nullable Void visitClass(ClassTree type, @Nullable Void nothing) {
            if (isPublic(type.getModifiers())) {
                around.push(type);
                super.visitClass(type, null);
                around.pop();
            }
            return null;
        }

        @Override
        public @Nullable Void visitMethod(MethodTree method, @Nullable Void nothing) {
            if (!isPublic(method.getModifiers())) {
                return null;
            }
            Tree result = method.getReturnType();
            boolean number = result != null && isNumber(result);
            if (number && method.getBody() != null) {
                functions.add(new Function(
                        offence(method, name(method)),
                        method.getModifiers().getFlags().contains(Modifier.STATIC),
                        tags(getCurrentPath()),
                        typeTags()));
            }
            if (has(method.getModifiers(), "Override")) {
                return null;
            }
            if (number && !saysUnit(method.getModifiers(), result)) {
                report(method, name(method) + " result");
            }
            for (VariableTree parameter : method.getParameters()) {
                // A record's compact constructor has the components themselves for parameters.
                boolean own = start(parameter) >= start(method);
                if (own && isNumber(parameter.getType()) && !saysUnit(parameter.getModifiers(), parameter.getType())) {
                    report(parameter, name(method) + " parameter " + parameter.getName());
                }
            }
            return null;
        }

        @Override
        public @Nullable Void visitVariable(VariableTree field, @Nullable Void nothing) {
            boolean component = isComponent(field);
            if ((component || isPublic(field.getModifiers()))
                    && isNumber(field.getType())
                    && !saysUnit(field.getModifiers(), field.getType())) {
                report(field, typeName() + "." + field.getName() + (component ? " component" : " constant"));
            }
            return null;
        }

        /** Members of an interface are public without the word. */
        private boolean isPublic(ModifiersTree modifiers) {
            ClassTree owner = around.peek();
            boolean implied = owner != null
                    && (owner.getKind() == Tree.Kind.INTERFACE || owner.getKind() == Tree.Kind.ANNOTATION_TYPE);
            return modifiers.getFlags().contains(Modifier.PUBLIC)
                    || (implied && !modifiers.getFlags().contains(Modifier.PRIVATE));
        }

        /** The parser gives a record's components as fields that are private, final and not static. */
        private boolean isComponent(VariableTree field) {
            ClassTree owner = around.peek();
            return owner != null
                    && owner.getKind() == Tree.Kind.RECORD
                    && !field.getModifiers().getFlags().contains(Modifier.STATIC);
        }

        private boolean isNumber(Tree type) {
            if (type instanceof AnnotatedTypeTree annotated) {
                return isNumber(annotated.getUnderlyingType());
            }
            if (type instanceof ArrayTypeTree array) {
                return isNumber(array.getType());
            }
            return type instanceof PrimitiveTypeTree primitive && primitive.getPrimitiveTypeKind() == TypeKind.DOUBLE;
        }

        private boolean saysUnit(ModifiersTree modifiers, Tree type) {
            return has(modifiers, "Unit") || typeSaysUnit(type);
        }

        private boolean typeSaysUnit(Tree type) {
            if (type instanceof AnnotatedTypeTree annotated) {
                return annotated.getAnnotations().stream().anyMatch(a -> is(a, "Unit"))
                        || typeSaysUnit(annotated.getUnderlyingType());
            }
            return type instanceof ArrayTypeTree array && typeSaysUnit(array.getType());
        }

        private boolean has(ModifiersTree modifiers, String annotation) {
            return modifiers.getAnnotations().stream().anyMatch(each -> is(each, annotation));
        }

        private boolean is(AnnotationTree annotation, String simpleName) {
            String written = annotation.getAnnotationType().toString();
            return written.substring(written.lastIndexOf('.') + 1).equals(simpleName);
        }

        private Set<String> typeTags() {
            Set<String> tags = new HashSet<>();
            for (TreePath path = getCurrentPath(); path != null; path = path.getParentPath()) {
                if (path.getLeaf() instanceof ClassTree) {
                    tags.addAll(tags(path));
                }
            }
            return tags;
        }

        private Set<String> tags(TreePath path) {
            DocCommentTree comment = trees.getDocCommentTree(path);
            Set<String> tags = new HashSet<>();
            if (comment != null) {
                for (var tag : comment.getBlockTags()) {
                    String written = tag.toString().strip();
                    if (tag instanceof BlockTagTree named
                            && written.length() > named.getTagName().length() + 2) {
                        tags.add(named.getTagName());
                    }
                }
            }
            return tags;
        }

        private String name(MethodTree method) {
            return typeName() + (method.getReturnType() == null ? "" : "." + method.getName());
        }

        private String typeName() {
            List<String> names = new ArrayList<>();
            around.descendingIterator()
                    .forEachRemaining(type -> names.add(type.getSimpleName().toString()));
            return String.join(".", names);
        }

        private void report(Tree where, String what) {
            withoutUnit.add(offence(where, what + ": no @Unit"));
        }

        private Offence offence(Tree where, String what) {
            return new Offence(path(), file.getLineMap().getLineNumber(start(where)), what);
        }

        private long start(Tree where) {
            return trees.getSourcePositions().getStartPosition(file, where);
        }

        private Path path() {
            return Path.of(file.getSourceFile().toUri());
        }
    }
}
