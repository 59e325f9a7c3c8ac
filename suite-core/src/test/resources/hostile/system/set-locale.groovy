Locale.setDefault(Locale.forLanguageTag('ar-EG-u-nu-arab'))
