@Grab('far:away:1')
import java.lang.String as Text
