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
    <name>AxisActions</name>
    <message numerus="yes">
        <source>paste %n axis(es)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A machine has at most %n axis(es).</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Differences</name>
    <message numerus="yes">
        <source>%n thing(s) differ: %1.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MachineView</name>
    <message numerus="yes">
        <source>belt loop, %n pulley(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message numerus="yes">
        <source>What is typed for %1 and %n more field(s) cannot be taken and is not saved.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>feedwright::ConcernList</name>
    <message numerus="yes">
        <source>%n to settle, the gravest first</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n answered</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>feedwright::FieldsForm</name>
    <message numerus="yes">
        <source>%n to mend</source>
        <comment>fields of a section</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wanted</source>
        <comment>fields of a section</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n given</source>
        <comment>fields of a section</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>feedwright::GraveCautions</name>
    <message numerus="yes">
        <source>%n more</source>
        <comment>cautions</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>feedwright::HelpWindow</name>
    <message numerus="yes">
        <source>%n page(s) found.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>feedwright::MachineView</name>
    <message numerus="yes">
        <source>%n axis(es)</source>
        <translation type="unfinished">
            <numerusform>%n axis</numerusform>
            <numerusform>%n axes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n motor(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to settle</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n output(s) for motors in all; the two motors of one axis get the same steps, each from an output of its own.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
</TS>
