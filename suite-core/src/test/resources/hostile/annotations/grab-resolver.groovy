@GrabResolver(name = 'far', root = 'http://127.0.0.1:«port»/')
@Grab('far:away-resolver:1')
import java.lang.String as Text
