def text = '<!DOCTYPE a [<!ENTITY b SYSTEM "http://127.0.0.1:«port»/">]><a>&b;</a>'
javax.xml.parsers.DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(text.bytes))
