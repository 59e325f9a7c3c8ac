def text = '<java><object class="java.io.FileWriter"><string>marker</string></object></java>'
new java.beans.XMLDecoder(new ByteArrayInputStream(text.bytes)).readObject()
