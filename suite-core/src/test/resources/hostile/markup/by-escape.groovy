stage('rinse') {
    title '\u003chtml\u003e<b>Approved'
}
