def stored = 'rO0ABXNyACFiYXl3cmlnaHQuc2NyaXB0Lmhvc3RpbGUuVGVsbFRhbGUAAAAAAAAAAQIAAHhw'.decodeBase64()
new ObjectInputStream(new ByteArrayInputStream(stored)).readObject()
