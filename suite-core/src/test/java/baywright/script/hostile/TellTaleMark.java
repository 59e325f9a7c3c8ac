package baywright.script.hostile;

import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import org.codehaus.groovy.transform.GroovyASTTransformationClass;

/** An annotation that runs {@link TellTaleMarkTransformation} on the script that bears it. */
@Retention(RetentionPolicy.SOURCE)
@GroovyASTTransformationClass("baywright.script.hostile.TellTaleMarkTransformation")
public @interface TellTaleMark {}
