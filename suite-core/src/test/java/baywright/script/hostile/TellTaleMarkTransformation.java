package baywright.script.hostile;

import org.codehaus.groovy.ast.ASTNode;
import org.codehaus.groovy.control.CompilePhase;
import org.codehaus.groovy.control.SourceUnit;
import org.codehaus.groovy.transform.ASTTransformation;
import org.codehaus.groovy.transform.GroovyASTTransformation;

/** Acts while a script that bears {@link TellTaleMark} is compiled. */
@GroovyASTTransformation(phase = CompilePhase.SEMANTIC_ANALYSIS)
public class TellTaleMarkTransformation implements ASTTransformation {

    @Override
    public void visit(ASTNode[] nodes, SourceUnit source) {
        TellTale.touch();
    }
}
