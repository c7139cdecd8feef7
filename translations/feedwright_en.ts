<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
<context>
    <name>AxesPanel</name>
    <message numerus="yes">
        <source>%n axis(es)</source>
        <translation>
            <numerusform>%n axis</numerusform>
            <numerusform>%n axes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n caution(s)</source>
        <translation>
            <numerusform>%n caution</numerusform>
            <numerusform>%n cautions</numerusform>
        </translation>
    </message>
</context>
</TS>
