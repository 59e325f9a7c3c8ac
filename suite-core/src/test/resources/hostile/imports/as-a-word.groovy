import java.io.File as title
new title('marker').createNewFile()
