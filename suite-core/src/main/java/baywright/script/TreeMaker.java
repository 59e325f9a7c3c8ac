package baywright.script;

import baywright.quantity.Unit;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.codehaus.groovy.ast.ASTNode;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.ModuleNode;
import org.codehaus.groovy.ast.Parameter;
import org.codehaus.groovy.ast.expr.ArgumentListExpression;
import org.codehaus.groovy.ast.expr.BinaryExpression;
import org.codehaus.groovy.ast.expr.BooleanExpression;
import org.codehaus.groovy.ast.expr.ClosureExpression;
import org.codehaus.groovy.ast.expr.ConstantExpression;
import org.codehaus.groovy.ast.expr.DeclarationExpression;
import org.codehaus.groovy.ast.expr.ElvisOperatorExpression;
import org.codehaus.groovy.ast.expr.EmptyExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.ast.expr.GStringExpression;
import org.codehaus.groovy.ast.expr.ListExpression;
import org.codehaus.groovy.ast.expr.MapEntryExpression;
import org.codehaus.groovy.ast.expr.MapExpression;
import org.codehaus.groovy.ast.expr.MethodCallExpression;
import org.codehaus.groovy.ast.expr.NamedArgumentListExpression;
import org.codehaus.groovy.ast.expr.NotExpression;
import org.codehaus.groovy.ast.expr.PropertyExpression;
import org.codehaus.groovy.ast.expr.RangeExpression;
import org.codehaus.groovy.ast.expr.TernaryExpression;
import org.codehaus.groovy.ast.expr.TupleExpression;
import org.codehaus.groovy.ast.expr.UnaryMinusExpression;
import org.codehaus.groovy.ast.expr.UnaryPlusExpression;
import org.codehaus.groovy.ast.expr.VariableExpression;
import org.codehaus.groovy.ast.stmt.BlockStatement;
import org.codehaus.groovy.ast.stmt.BreakStatement;
import org.codehaus.groovy.ast.stmt.CaseStatement;
import org.codehaus.groovy.ast.stmt.EmptyStatement;
import org.codehaus.groovy.ast.stmt.ExpressionStatement;
import org.codehaus.groovy.ast.stmt.ForStatement;
import org.codehaus.groovy.ast.stmt.IfStatement;
import org.codehaus.groovy.ast.stmt.ReturnStatement;
import org.codehaus.groovy.ast.stmt.Statement;
import org.codehaus.groovy.ast.stmt.SwitchStatement;

/**
 * Turns Groovy's tree into {@link Node}s. What is not on its list is refused, always by comparing classes exactly: many
 * of Groovy's node classes extend a harmless one.
 */
final class TreeMaker {

    private static final Pattern AMOUNT_WITHOUT_DOT = Pattern.compile("(\\d+) *([A-Za-z]\\w*)");
    private static final String TRIVIAL_BLOCK = "braces on their own mean nothing; write the word that they belong to";

    /** Thrown inside for a statement that was refused; its problem is already noted. */
    private static final class RefusedHere extends RuntimeException {
        private static final long serialVersionUID = 1L;

        RefusedHere() {
            super(null, null, false, false);
        }
    }

    private final SourceText source;
    private final Problems problems;
    private final Map<Place, List<Node>> blocks;

    /** Takes blocks that were read before by the place of their opening brace; each is taken out where it is met. */
    TreeMaker(SourceText source, Problems problems, Map<Place, List<Node>> blocks) {
        this.source = source;
        this.problems = problems;
        this.blocks = blocks;
    }

    @SuppressWarnings("ReferenceEquality") // a class that calls itself like the script is equal to it and not the same
    List<Node> script(ModuleNode module) {
        for (ClassNode type : module.getClasses()) {
            if (type != module.getScriptClassDummy()) {
                note(type, "a script declares no types");
            }
        }
        if (module.getPackage() != null
                || !module.getImports().isEmpty()
                || !module.getStarImports().isEmpty()
                || !module.getStaticImports().isEmpty()
                || !module.getStaticStarImports().isEmpty()) {
            note(module, "a script has neither package nor imports");
        }
        module.getMethods().forEach(m -> note(m, "a script declares no methods; write def name = value"));
        return statements(module.getStatementBlock().getStatements());
    }

    private List<Node> statements(List<Statement> list) {
        List<Node> made = new ArrayList<>();
        list.forEach(s -> read(s).ifPresent(made::add));
        return made;
    }

    /** A refused statement is noted and left out; the ones after it are read all the same. */
    private Optional<Node> read(Statement statement) {
        try {
            return Optional.ofNullable(statement(statement));
        } catch (RefusedHere e) {
            return Optional.empty();
        }
    }

    /** The statement; nothing for an empty one. */
    private Node statement(Statement statement) {
        if (statement.getStatementLabels() != null
                && !statement.getStatementLabels().isEmpty()) {
            throw refuse(
                    statement,
                    "a line has no label; a word such as 'title' stands without a colon, and an argument's name behind its word");
        }
        if (source.isEmptied(statement.getLineNumber())) {
            throw new RefusedHere();
        }
        Class<?> kind = statement.getClass();
        if (kind == ExpressionStatement.class) {
            return topExpression(((ExpressionStatement) statement).getExpression());
        }
        if (kind == IfStatement.class) {
            return when((IfStatement) statement);
        }
        if (kind == SwitchStatement.class) {
            return choice((SwitchStatement) statement);
        }
        if (kind == ForStatement.class) {
            return each((ForStatement) statement);
        }
        boolean added = statement.getLineNumber() < 1 && kind == ReturnStatement.class;
        if (statement instanceof EmptyStatement || added) {
            return null; // Groovy adds a return to a script without statements
        }
        if (kind == BlockStatement.class) {
            throw refuse(statement, TRIVIAL_BLOCK);
        }
        if (kind == BreakStatement.class) {
            throw refuse(statement, "'break' only ends a case of a switch");
        }
        throw refuse(
                statement,
                "this kind of statement is not part of the stage language; there are words, def, if,"
                        + " switch and for");
    }

    private Node topExpression(Expression expression) {
        if (expression.getClass() == DeclarationExpression.class) {
            return define((DeclarationExpression) expression);
        }
        if (expression.getClass() == ClosureExpression.class) {
            throw refuse(expression, TRIVIAL_BLOCK);
        }
        return expression(expression);
    }

    private Node define(DeclarationExpression declaration) {
        boolean plain = !declaration.isMultipleAssignmentDeclaration()
                && declaration.getAnnotations().isEmpty()
                && declaration.getVariableExpression().isDynamicTyped()
                && source.from(declaration.getLineNumber(), declaration.getColumnNumber())
                        .matches("def\\s.*");
        if (!plain) {
            throw refuse(declaration, Refused.TYPED);
        }
        if (declaration.getRightExpression().getClass() == EmptyExpression.class) {
            throw refuse(declaration, "a local gets its value at once: def name = value");
        }
        String name = declaration.getVariableExpression().getName();
        Expression right = declaration.getRightExpression();
        Node value = right.getClass() == ClosureExpression.class ? block((ClosureExpression) right) : expression(right);
        return new Node.Define(name, value, place(declaration.getVariableExpression()));
    }

    private Node when(IfStatement statement) {
        Node condition = expression(statement.getBooleanExpression());
        return new Node.When(
                condition, branch(statement.getIfBlock()), branch(statement.getElseBlock()), place(statement));
    }

    private List<Node> branch(Statement statement) {
        return statement.getClass() == BlockStatement.class
                ? statements(((BlockStatement) statement).getStatements())
                : statements(List.of(statement));
    }

    private Node choice(SwitchStatement statement) {
        Node subject = expression(statement.getExpression());
        List<Node.Case> cases = new ArrayList<>();
        List<Node> matches = new ArrayList<>();
        boolean hasDefault = !(statement.getDefaultStatement() instanceof EmptyStatement);
        List<CaseStatement> all = statement.getCaseStatements();
        for (int i = 0; i < all.size(); i++) {
            CaseStatement one = all.get(i);
            matches.add(expression(one.getExpression()));
            List<Statement> code = code(one.getCode());
            boolean last = i == all.size() - 1 && !hasDefault;
            if (code.isEmpty() && !last) {
                continue;
            }
            cases.add(new Node.Case(matches, statements(withoutBreak(one, code, last))));
            matches = new ArrayList<>();
        }
        if (!matches.isEmpty()) {
            throw refuse(statement, "a case before 'default' needs something to do");
        }
        List<Node> otherwise = hasDefault
                ? statements(withoutBreak(statement.getDefaultStatement(), code(statement.getDefaultStatement()), true))
                : List.of();
        return new Node.Choice(subject, cases, otherwise, place(statement));
    }

    private static List<Statement> code(Statement statement) {
        if (statement instanceof EmptyStatement) {
            return List.of();
        }
        return statement.getClass() == BlockStatement.class
                ? ((BlockStatement) statement).getStatements()
                : List.of(statement);
    }

    private List<Statement> withoutBreak(ASTNode owner, List<Statement> code, boolean last) {
        if (!code.isEmpty() && code.get(code.size() - 1).getClass() == BreakStatement.class) {
            return code.subList(0, code.size() - 1);
        }
        if (!last) {
            throw refuse(owner, "a case ends with 'break', so that it does not run into the next one");
        }
        return code;
    }

    private Node each(ForStatement statement) {
        Parameter variable = statement.getValueVariable();
        if (variable == null || variable == ForStatement.FOR_LOOP_DUMMY || statement.getIndexVariable() != null) {
            throw refuse(statement, "a loop walks a list: for (x in list) { }");
        }
        plainParameter(variable);
        return new Node.Each(
                variable.getName(),
                expression(statement.getCollectionExpression()),
                branch(statement.getLoopBlock()),
                place(statement));
    }

    private void plainParameter(Parameter parameter) {
        boolean plain = parameter.isDynamicTyped()
                && parameter.getInitialExpression() == null
                && parameter.getAnnotations().isEmpty();
        if (!plain) {
            throw refuse(parameter, "a name stands alone here, without a type and without a value of its own");
        }
    }

    private Node expression(Expression expression) {
        Class<?> kind = expression.getClass();
        if (kind == ConstantExpression.class) {
            return literal((ConstantExpression) expression);
        }
        if (kind == VariableExpression.class) {
            return name((VariableExpression) expression);
        }
        if (kind == MethodCallExpression.class) {
            return call((MethodCallExpression) expression);
        }
        if (kind == PropertyExpression.class) {
            return member((PropertyExpression) expression);
        }
        if (kind == BinaryExpression.class) {
            return binary((BinaryExpression) expression);
        }
        if (kind == ListExpression.class) {
            return new Node.Items(expressions(((ListExpression) expression).getExpressions()), place(expression));
        }
        if (kind == MapExpression.class) {
            return new Node.Entries(entries((MapExpression) expression), place(expression));
        }
        if (kind == GStringExpression.class) {
            return template((GStringExpression) expression);
        }
        if (kind == BooleanExpression.class) {
            return expression(((BooleanExpression) expression).getExpression());
        }
        if (kind == NotExpression.class) {
            Node operand = expression(((NotExpression) expression).getExpression());
            return new Node.Unary(Operator.NOT, operand, place(expression));
        }
        if (kind == UnaryMinusExpression.class) {
            Node operand = expression(((UnaryMinusExpression) expression).getExpression());
            return new Node.Unary(Operator.MINUS, operand, place(expression));
        }
        if (kind == UnaryPlusExpression.class) {
            return expression(((UnaryPlusExpression) expression).getExpression());
        }
        if (kind == ElvisOperatorExpression.class) {
            ElvisOperatorExpression elvis = (ElvisOperatorExpression) expression;
            return new Node.Fallback(
                    expression(elvis.getTrueExpression()), expression(elvis.getFalseExpression()), place(elvis));
        }
        if (kind == TernaryExpression.class) {
            TernaryExpression ternary = (TernaryExpression) expression;
            return new Node.Choose(
                    expression(ternary.getBooleanExpression()),
                    expression(ternary.getTrueExpression()),
                    expression(ternary.getFalseExpression()),
                    place(ternary));
        }
        if (kind == RangeExpression.class) {
            return span((RangeExpression) expression);
        }
        if (kind == ClosureExpression.class) {
            throw refuse(expression, "a block in braces stands only behind a word or a collection's function");
        }
        throw refuse(
                expression,
                "this is not part of the stage language; there are numbers with units, texts, lists,"
                        + " maps, ranges and arithmetic");
    }

    private List<Node> expressions(List<Expression> list) {
        List<Node> made = new ArrayList<>();
        list.forEach(e -> made.add(expression(e)));
        return made;
    }

    private Node literal(ConstantExpression constant) {
        Object value = constant.getValue();
        Place where = place(constant);
        if (value == null) {
            return new Node.Literal(Value.NOTHING, where);
        }
        if (value instanceof Boolean) {
            return new Node.Literal(value, where);
        }
        if (value instanceof String text) {
            return new Node.Literal(checked(constant, text), where);
        }
        if (value instanceof Integer || value instanceof Long) {
            return new Node.Literal(BigDecimal.valueOf(((Number) value).longValue()), where);
        }
        if (value instanceof BigInteger whole) {
            return new Node.Literal(new BigDecimal(whole), where);
        }
        if (value instanceof BigDecimal number) {
            long magnitude = (long) number.precision() - number.scale();
            if (Math.abs((long) number.scale()) > Limits.SCALE || Math.abs(magnitude) > Limits.SCALE) {
                throw refuse(
                        constant,
                        "a number has at most " + Limits.SCALE + " places before and " + Limits.SCALE
                                + " behind the point");
            }
            return new Node.Literal(number, where);
        }
        throw refuse(constant, "a number is written plainly, such as 12 or 0.5, without a letter behind it");
    }

    private String checked(ASTNode node, String text) {
        if (Characters.hasForbidden(text) || text.indexOf('\r') >= 0) {
            throw refuse(node, "a text holds no control, direction or zero-width characters");
        }
        return text;
    }

    private Node name(VariableExpression variable) {
        if (variable.getLineNumber() < 1 || variable.isThisExpression() || variable.isSuperExpression()) {
            throw refuse(variable, "'" + variable.getName() + "' is not part of the stage language");
        }
        if (!variable.isDynamicTyped()) {
            throw refuse(variable, "a name stands alone here, without a type");
        }
        return new Node.Name(variable.getName(), place(variable));
    }

    private Node member(PropertyExpression property) {
        if (property.isSafe() || property.isSpreadSafe()) {
            throw refuse(property, "write a plain dot");
        }
        String name = writtenName(property.getProperty());
        if (!followsDot(property.getProperty())) {
            throw refuse(property.getProperty(), behindGap(name));
        }
        return new Node.Member(expression(property.getObjectExpression()), name, place(property.getObjectExpression()));
    }

    /** A name that stands in the text as a name, not as a quoted text that happens to be used as one. */
    private String writtenName(Expression expression) {
        if (expression.getClass() == ConstantExpression.class
                && ((ConstantExpression) expression).getValue() instanceof String name
                && !name.isEmpty()
                && source.from(expression.getLineNumber(), expression.getColumnNumber())
                        .startsWith(name)) {
            return name;
        }
        String written = source.from(expression.getLineNumber(), expression.getColumnNumber());
        boolean text = written.startsWith("'") || written.startsWith("\"");
        boolean number = !written.isEmpty() && Character.isDigit(written.charAt(0));
        if (followsDot(expression) || !(text || number)) {
            throw refuse(expression, "a name is written plainly here, without quotes");
        }
        throw refuse(expression, "a comma is missing before this " + (text ? "text" : "number"));
    }

    private Node binary(BinaryExpression binary) {
        String sign = binary.getOperation().getText();
        if (sign.equals("[")) {
            if (binary.isSafe()) {
                throw refuse(binary, "write list[0]");
            }
            return new Node.At(
                    expression(binary.getLeftExpression()), expression(binary.getRightExpression()), place(binary));
        }
        if (sign.equals("=")) {
            throw refuse(binary, Refused.ONCE + "; a word stands without '='");
        }
        Operator operator = Operator.binary(sign)
                .orElseThrow(() -> refuse(
                        binary,
                        "'" + sign + "' is not part of the stage language; there are + - * /"
                                + " % ** == != < <= > >= && || ! and in"));
        Node left = expression(binary.getLeftExpression());
        return new Node.Binary(operator, left, expression(binary.getRightExpression()), place(binary));
    }

    private Node span(RangeExpression range) {
        if (range.isExclusiveLeft() || range.isExclusiveRight()) {
            throw refuse(range, "a range has both its ends: 1..3");
        }
        return new Node.Span(expression(range.getFrom()), expression(range.getTo()), place(range));
    }

    private Node template(GStringExpression text) {
        List<Node> parts = new ArrayList<>();
        List<ConstantExpression> strings = text.getStrings();
        List<Expression> values = text.getValues();
        for (int i = 0; i < Math.max(strings.size(), values.size()); i++) {
            if (i < strings.size() && strings.get(i).getValue() instanceof String s && !s.isEmpty()) {
                parts.add(new Node.Literal(checked(text, s), place(text)));
            }
            if (i < values.size()) {
                parts.add(expression(values.get(i)));
            }
        }
        return new Node.Template(parts, place(text));
    }

    private List<Node.Entry> entries(MapExpression map) {
        List<Node.Entry> made = new ArrayList<>();
        for (MapEntryExpression entry : map.getMapEntryExpressions()) {
            if (entry.getClass() != MapEntryExpression.class) {
                throw refuse(entry, "a map is written as [name: value]");
            }
            made.add(new Node.Entry(expression(entry.getKeyExpression()), expression(entry.getValueExpression())));
        }
        return made;
    }

    private Node call(MethodCallExpression call) {
        if (call.isSafe() || call.isSpreadSafe() || call.isUsingGenerics()) {
            throw refuse(call, "write a plain dot and a plain name");
        }
        Expression on = call.getObjectExpression();
        if (call.getMethod().getClass() == ConstantExpression.class
                && on.getClass() == ClosureExpression.class
                && source.from(on.getLineNumber(), on.getColumnNumber()).startsWith("switch")) {
            throw refuse(call, "a switch is a statement here and has no value; use a ? b : c or a map");
        }
        Optional<Node> receiver = Optional.empty();
        if (!call.isImplicitThis()) {
            if (isCommandChain(call)) {
                throw refuse(call.getMethod(), secondWord(call.getMethod(), call.getMethodAsString()));
            }
            receiver = Optional.of(expression(call.getObjectExpression()));
        }
        String name = writtenName(call.getMethod());
        Arguments arguments = arguments(call.getArguments());
        Place where = receiver.isPresent() ? place(call) : place(call.getMethod());
        return new Node.Call(receiver, name, arguments.args, arguments.named, arguments.block, where);
    }

    /** {@code a 5 ml} is read as {@code a(5).ml}: most often the dot between a number and its unit is missing. */
    private static String behindGap(String name) {
        return Unit.of(name).isPresent()
                ? "an amount is a number, a dot and a unit, such as 5." + name
                : secondWord(name);
    }

    /** The first amount behind a word, its dot missing, is read as a second word as well. */
    private String secondWord(Expression word, String met) {
        Matcher amount = AMOUNT_WITHOUT_DOT.matcher(source.from(word.getLineNumber(), word.getColumnNumber()));
        return amount.lookingAt() && Unit.of(amount.group(2)).isPresent()
                ? "an amount is a number, a dot and a unit: " + amount.group(1) + "." + amount.group(2)
                : secondWord(met);
    }

    private static String secondWord(String met) {
        return "'" + met + "' begins a second word on the line; begin a new line or put a comma before it";
    }

    /** {@code a b c d} is read as {@code a(b).c(d)}: the dot is not in the text. */
    private boolean isCommandChain(MethodCallExpression call) {
        return !followsDot(call.getMethod());
    }

    private boolean followsDot(Expression method) {
        int line = method.getLineNumber();
        String before = source.line(line);
        int points = before.codePointCount(0, before.length());
        int column = Math.min(method.getColumnNumber() - 1, points);
        if (line < 1 || column < 0) {
            return false;
        }
        String head = before.substring(0, before.offsetByCodePoints(0, column)).stripTrailing();
        for (int back = line - 1; head.isEmpty() && back > 0; back--) {
            head = source.line(back).stripTrailing();
        }
        return head.endsWith(".");
    }

    private static final class Arguments {
        private final List<Node> args = new ArrayList<>();
        private final List<Node.Entry> named = new ArrayList<>();
        private Optional<Node.Block> block = Optional.empty();
    }

    private Arguments arguments(Expression expression) {
        if (!Set.of(ArgumentListExpression.class, TupleExpression.class).contains(expression.getClass())) {
            throw refuse(expression, "these arguments cannot be read; write word(a, b, name: c)");
        }
        Arguments made = new Arguments();
        List<Expression> list = ((TupleExpression) expression).getExpressions();
        for (int i = 0; i < list.size(); i++) {
            Expression one = list.get(i);
            Class<?> kind = one.getClass();
            if (kind == NamedArgumentListExpression.class || isNamedArguments(one, i)) {
                made.named.addAll(entries((MapExpression) one));
            } else if (kind == ClosureExpression.class && i == list.size() - 1) {
                made.block = Optional.of(block((ClosureExpression) one));
            } else {
                made.args.add(expression(one));
            }
        }
        return made;
    }

    /** A first map without its bracket in the text holds the named arguments, wherever they were written. */
    private boolean isNamedArguments(Expression expression, int position) {
        return position == 0
                && expression.getClass() == MapExpression.class
                && !source.from(expression.getLineNumber(), expression.getColumnNumber())
                        .startsWith("[");
    }

    private Node.Block block(ClosureExpression closure) {
        List<String> names = new ArrayList<>();
        Parameter[] parameters = closure.getParameters();
        boolean bare = parameters != null && parameters.length == 0;
        if (parameters != null) {
            for (Parameter parameter : parameters) {
                plainParameter(parameter);
                names.add(parameter.getName());
            }
        }
        List<Node> before = blocks.remove(place(closure));
        List<Node> body = before != null ? before : branch(closure.getCode());
        return new Node.Block(names, bare, body, place(closure));
    }

    private Place place(ASTNode node) {
        return source.place(node.getLineNumber(), node.getColumnNumber());
    }

    private void note(ASTNode node, String message) {
        problems.error(place(node), "refused", message);
    }

    private RefusedHere refuse(ASTNode node, String message) {
        note(node, message);
        return new RefusedHere();
    }
}
