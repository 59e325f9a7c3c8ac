package baywright.script;

import java.util.Arrays;
import java.util.Optional;

/** The operators of the language. */
public enum Operator {
    PLUS("+"),
    MINUS("-"),
    TIMES("*"),
    DIVIDE("/"),
    REMAINDER("%"),
    POWER("**"),
    EQUAL("=="),
    NOT_EQUAL("!="),
    LESS("<"),
    AT_MOST("<="),
    MORE(">"),
    AT_LEAST(">="),
    AND("&&"),
    OR("||"),
    IN("in"),
    NOT("!");

    private final String sign;

    Operator(String sign) {
        this.sign = sign;
    }

    /** As it is written in a script. */
    public String sign() {
        return sign;
    }

    /** The operator with two sides written so, if the language has it. */
    static Optional<Operator> binary(String sign) {
        return Arrays.stream(values())
                .filter(o -> o != NOT && o.sign.equals(sign))
                .findFirst();
    }
}
