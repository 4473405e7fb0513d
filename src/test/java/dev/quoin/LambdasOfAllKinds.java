package dev.quoin;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleSupplier;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.IntSupplier;
import java.util.function.IntToLongFunction;
import java.util.function.IntUnaryOperator;
import java.util.function.LongConsumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What {@link RenewClassesTest} runs before and after the renewal: each method that is not private tells what its lambdas did. */
final class LambdasOfAllKinds {
    private final String name;
    private int calls;

    private LambdasOfAllKinds(String name) {
        this.name = name;
    }

    static String nothingCaptured() {
        return Stream.of("b", "a").map(word -> word + word).sorted().collect(Collectors.joining(" "));
    }

    static String oneCaptured() {
        String before = "x".repeat(3);
        Function<String, String> join = word -> before + word;
        return join.apply("y");
    }

    static String eachPrimitiveCaptured() {
        boolean z = name("").isEmpty();
        char c = name("c").charAt(0);
        byte b = (byte) name("bb").length();
        short s = (short) -name("sss").length();
        int i = name("i").hashCode();
        long j = (long) i << 40;
        float f = i / 7f;
        double d = i / 3.0;
        int[] numbers = {i, b};
        Supplier<String> all = () -> z + " " + c + b + s + i + j + f + d + Arrays.toString(numbers);
        return all.get();
    }

    static String numbersBesidesWhatIsCaptured() {
        long above = 1L << name("x").length();
        double share = 0.5 * above;
        DoubleBinaryOperator mixed = (a, b) -> (a - b) * share + above;
        return String.valueOf(mixed.applyAsDouble(10, 4));
    }

    static String eachObjectOfItsOwnCapture() {
        List<Supplier<Integer>> all = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            int here = i;
            all.add(() -> here);
        }
        return all.stream().map(Supplier::get).toList().toString();
    }

    static String theObjectItselfCaptured() {
        LambdasOfAllKinds one = new LambdasOfAllKinds("one");
        Runnable count = () -> one.calls++;
        count.run();
        count.run();
        return one.counted(() -> one.name).get() + one.calls;
    }

    private Supplier<String> counted(Supplier<String> inner) {
        return () -> inner.get() + ++calls;
    }

    static String primitiveFunctions() {
        IntFunction<String> text = i -> "n" + i;
        ToDoubleFunction<String> length = word -> word.length() / 2.0;
        IntUnaryOperator negated = i -> -i;
        return text.apply(4) + length.applyAsDouble("abc") + negated.applyAsInt(5);
    }

    static String boxed() {
        IntFunction<Object> integer = Integer::valueOf;
        IntFunction<Comparable<?>> comparable = LambdasOfAllKinds::twice;
        Supplier<Number> number = () -> 1.5f;
        Function<String, Integer> length = String::length;
        return kind(integer.apply(1)) + kind(comparable.apply(2)) + kind(number.get()) + kind(length.apply("abc"));
    }

    static String unboxed() {
        Function<Integer, Integer> twice = LambdasOfAllKinds::twice;
        ToIntFunction<List<Integer>> first = numbers -> numbers.get(0);
        IntSupplier integer = new AtomicReference<>(7)::get;
        BooleanSupplier truth = new AtomicReference<>(true)::get;
        return kind(twice.apply(21)) + first.applyAsInt(List.of(8)) + integer.getAsInt() + truth.getAsBoolean();
    }

    static String widened() {
        Function<Integer, Long> fromInteger = LambdasOfAllKinds::twiceAsLong;
        Function<Character, Long> fromCharacter = LambdasOfAllKinds::twiceAsLong;
        Function<Byte, Double> fromByte = LambdasOfAllKinds::half;
        IntToLongFunction result = Math::abs;
        ToDoubleFunction<Short> ofShort = Short::intValue;
        LongSupplier ofInteger = new AtomicReference<>(Integer.MIN_VALUE)::get;
        DoubleSupplier ofLength = "four"::length;
        DoubleBinaryOperator sum = Double::sum;
        return kind(fromInteger.apply(1 << 30))
                + kind(fromCharacter.apply('a'))
                + kind(fromByte.apply((byte) -3))
                + result.applyAsLong(-5)
                + ofShort.applyAsDouble((short) 300)
                + ofInteger.getAsLong()
                + ofLength.getAsDouble()
                + sum.applyAsDouble(1, 2);
    }

    static String resultsThatAreDropped() {
        List<String> words = new ArrayList<>();
        Consumer<String> add = words::add;
        LongConsumer wide = LambdasOfAllKinds::twiceAsLong;
        Runnable made = LambdasOfAllKinds.Thing::new;
        Consumer<String> none = word -> {};
        add.accept("w");
        wide.accept(3);
        made.run();
        none.accept("x");
        return words.toString();
    }

    static String constructors() {
        Function<String, StringBuilder> builder = StringBuilder::new;
        Function<String, LambdasOfAllKinds> own = LambdasOfAllKinds::new;
        Supplier<Thing> thing = Thing::new;
        IntFunction<int[]> numbers = int[]::new;
        IntFunction<String[][]> table = String[][]::new;
        return builder.apply("b").reverse()
                + own.apply("o").name
                + thing.get().word
                + numbers.apply(2).length
                + Stream.of("a", "b").toArray(String[]::new).length
                + kind(table.apply(3).length);
    }

    /** With a private constructor, which is called as that of a nestmate. */
    private static final class Thing {
        private final String word;

        private Thing() {
            word = "thing";
        }
    }

    static String anyNumberOfArguments() {
        BiFunction<String, Object, String> one = String::format;
        UnaryOperator<String> none = String::format;
        Supplier<List<String>> list = List::of;
        return one.apply("%s!", 5) + none.apply("%%") + list.get();
    }

    static String boundAndUnbound() {
        Supplier<String> bound = "Bound"::toLowerCase;
        UnaryOperator<String> unbound = String::toUpperCase;
        BiFunction<String, String, Boolean> second = String::endsWith;
        Function<Object, String> text = Object::toString;
        Supplier<Integer> size = new ArrayList<>(List.of(1, 2))::size;
        return bound.get() + unbound.apply("u") + second.apply("abc", "c") + text.apply(12) + size.get();
    }

    static String privateMethods() {
        LambdasOfAllKinds one = new LambdasOfAllKinds("one");
        Supplier<String> bound = one::shout;
        Function<LambdasOfAllKinds, String> unbound = LambdasOfAllKinds::shout;
        UnaryOperator<String> fixed = LambdasOfAllKinds::name;
        return bound.get() + unbound.apply(one) + fixed.apply("n");
    }

    private String shout() {
        return name + "!";
    }

    private static String name(String given) {
        return given;
    }

    private static int twice(int number) {
        return 2 * number;
    }

    private static long twiceAsLong(long number) {
        return 2 * number;
    }

    private static double half(double number) {
        return number / 2;
    }

    private static String kind(Object value) {
        return value.getClass().getSimpleName() + value;
    }

    /** The same names as its base class has, so that what is called must not be looked up by name. */
    private static final class Louder extends Loud {
        private Supplier<String> voice() {
            return () -> "louder";
        }

        private Supplier<String> both() {
            Supplier<String> base = super::toString;
            return () -> base.get() + first().get() + voice().get();
        }

        @Override
        public String toString() {
            return "never called";
        }
    }

    private static class Loud {
        Supplier<String> first() {
            return this.voice();
        }

        private Supplier<String> voice() {
            return () -> "loud" + kind(1);
        }

        @Override
        public String toString() {
            return "base";
        }
    }

    static String methodsOfTheSameNameInASuperclass() {
        return new Louder().both().get();
    }

    /** With a reference to what only subclasses of a class of another package may call. */
    private static final class Shortened extends ArrayList<Integer> {
        private interface Range {
            void remove(int from, int to);
        }

        private Range remover() {
            return this::removeRange;
        }
    }

    static String aProtectedMethodOfAnotherPackage() {
        Shortened numbers = new Shortened();
        numbers.addAll(List.of(1, 2, 3, 4));
        numbers.remover().remove(1, 3);
        return numbers.toString();
    }

    /** With lambdas in all kinds of methods that an interface may have. */
    private interface Greeter {
        Supplier<String> CONSTANT = () -> "constant";

        String greet(String whom);

        default Greeter twice() {
            return whom -> greet(greet(whom));
        }

        default Supplier<String> hidden() {
            return this::secret;
        }

        private String secret() {
            return greet("secret");
        }

        static String plain(String whom) {
            UnaryOperator<String> inner = word -> word + "?";
            return inner.apply(whom);
        }
    }

    static String interfaces() {
        Greeter greeter = whom -> "hi " + whom;
        Greeter fixed = Greeter::plain;
        Supplier<Greeter> more = greeter::twice;
        BiFunction<Greeter, String, String> method = Greeter::greet;
        return greeter.twice().greet("a")
                + greeter.hidden().get()
                + fixed.greet("b")
                + more.get().greet("c")
                + method.apply(fixed, "d")
                + Greeter.CONSTANT.get();
    }

    private interface Narrowed extends Function<String, Integer> {
        @Override
        Integer apply(String word);
    }

    static String genericsWithABridge() {
        Narrowed length = String::length;
        Function<String, Integer> wide = length;
        return "" + length.apply("a") + wide.apply("ab")
                + wide.andThen(i -> i + 1).apply("abc");
    }

    private static <T extends Comparable<T> & CharSequence> String longest(List<T> words) {
        Comparator<T> order = Comparator.<T>comparingInt(CharSequence::length).thenComparing(T::compareTo);
        return words.stream().max(order).map(T::toString).orElse("");
    }

    static String severalBounds() {
        return longest(List.of("a", "ccc", "bbb"));
    }

    static String nested() {
        Function<Integer, Function<Integer, Function<Integer, Integer>>> add = a -> b -> c -> a * 100 + b * 10 + c;
        return "" + add.apply(1).apply(2).apply(3);
    }

    private static final Function<Integer, Integer> FACTORIAL =
            number -> number == 0 ? 1 : number * LambdasOfAllKinds.FACTORIAL.apply(number - 1);

    static String recursion() {
        return "" + FACTORIAL.apply(10);
    }

    private enum Shape {
        SQUARE(a -> a * a),
        DOUBLE(LambdasOfAllKinds::twice);

        private final IntUnaryOperator area;

        Shape(IntUnaryOperator area) {
            this.area = area;
        }
    }

    static String inAnEnumARecordAndALocalClass() {
        record Pair(int a, int b) {
            IntSupplier sum() {
                return () -> a + b;
            }
        }
        class Local {
            private final Supplier<Pair> pair = () -> new Pair(twice(1), 3);
        }
        return IntStream.range(0, 2)
                        .map(i -> Shape.values()[i].area.applyAsInt(5))
                        .boxed()
                        .toList()
                        .toString()
                + new Local().pair.get().sum().getAsInt();
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    static String wrongTypesAreRefused() {
        Function<String, Object> identity = LambdasOfAllKinds::same;
        Function<Integer, Integer> twice = LambdasOfAllKinds::twice;
        return refusal(() -> ((Function) identity).apply(1)) + refusal(() -> ((Function) twice).apply("1"));
    }

    static String nothingIsRefused() {
        Function<String, Integer> length = String::length;
        Function<Integer, Integer> twice = LambdasOfAllKinds::twice;
        List<String> none = none();
        return refusal(() -> length.apply(null))
                + refusal(() -> twice.apply(null))
                + refusal(() -> {
                    Supplier<Integer> size = none::size;
                    return size;
                });
    }

    private static List<String> none() {
        return null;
    }

    private static Object same(Object value) {
        return value;
    }

    private static String refusal(Supplier<Object> attempt) {
        try {
            return "none: " + attempt.get();
        } catch (ClassCastException | NullPointerException e) {
            return e.getClass().getSimpleName();
        }
    }

    /** Two generic interfaces whose one method differs once types are erased. */
    private interface Both extends Function<String, String>, WordMap {}

    private interface WordMap {
        String apply(String word);
    }

    @SuppressWarnings("unchecked")
    static String leftAlone() throws IOException, ClassNotFoundException {
        Both both = word -> word + word;
        Function<String, String> first = both;
        String end = "!";
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject((UnaryOperator<String> & Serializable) word -> word + end);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return ((UnaryOperator<String>) in.readObject()).apply(first.apply("a"));
        }
    }
}
