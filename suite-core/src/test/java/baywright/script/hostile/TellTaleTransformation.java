package baywright.script.hostile;

import org.codehaus.groovy.ast.ASTNode;
import org.codehaus.groovy.control.CompilePhase;
import org.codehaus.groovy.control.SourceUnit;
import org.codehaus.groovy.transform.ASTTransformation;
import org.codehaus.groovy.transform.GroovyASTTransformation;

/** Registered for every script on the test class path; it leaves the file {@code transformed} when it is run. */
@GroovyASTTransformation(phase = CompilePhase.CONVERSION)
public class TellTaleTransformation implements ASTTransformation {

    @Override
    public void visit(ASTNode[] nodes, SourceUnit source) {
        TellTale.leave("transformed");
    }
}
