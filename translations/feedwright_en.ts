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
<context>
    <name>Words</name>
    <message numerus="yes">
        <source>%n point(s), up to %1</source>
        <translation>
            <numerusform>%n point, up to %1</numerusform>
            <numerusform>%n points, up to %1</numerusform>
        </translation>
    </message>
</context>
</TS>
