TimeZone.setDefault(TimeZone.getTimeZone('GMT+14:00'))
