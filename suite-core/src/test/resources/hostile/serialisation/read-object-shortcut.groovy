new ByteArrayInputStream('rO0ABXNyACFiYXl3cmlnaHQuc2NyaXB0Lmhvc3RpbGUuVGVsbFRhbGUAAAAAAAAAAQIAAHhw'.decodeBase64()).withObjectInputStream(this.class.classLoader) { it.readObject() }
