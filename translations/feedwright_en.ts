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
        <source>%n to settle</source>
        <translation>
            <numerusform>%n to settle</numerusform>
            <numerusform>%n to settle</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <comment>trouble of an axis</comment>
        <translation>
            <numerusform>%1 and %n more</numerusform>
            <numerusform>%1 and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>AxisActions</name>
    <message numerus="yes">
        <source>paste %n axis(es)</source>
        <translation>
            <numerusform>paste %n axis</numerusform>
            <numerusform>paste %n axes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A machine has at most %n axis(es).</source>
        <translation>
            <numerusform>A machine has at most %n axis.</numerusform>
            <numerusform>A machine has at most %n axes.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Differences</name>
    <message numerus="yes">
        <source>%n thing(s) differ: %1.</source>
        <translation>
            <numerusform>%n thing differs: %1.</numerusform>
            <numerusform>%n things differ: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 and %n more</numerusform>
            <numerusform>%1 and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MachineView</name>
    <message numerus="yes">
        <source>belt loop, %n pulley(s)</source>
        <translation>
            <numerusform>belt loop, %n pulley</numerusform>
            <numerusform>belt loop, %n pulleys</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message numerus="yes">
        <source>What is typed for %1 and %n more field(s) cannot be taken and is not saved.</source>
        <translation>
            <numerusform>What is typed for %1 and %n more field cannot be taken and is not saved.</numerusform>
            <numerusform>What is typed for %1 and %n more fields cannot be taken and is not saved.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>What is typed for %1 cannot be taken, and %n more text(s) wait; they are not saved.</source>
        <translation>
            <numerusform>What is typed for %1 cannot be taken, and %n more text waits; they are not saved.</numerusform>
            <numerusform>What is typed for %1 cannot be taken, and %n more texts wait; they are not saved.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The answers to %1 and to %n more thing(s) are not kept yet and are not saved.</source>
        <translation>
            <numerusform>The answers to %1 and to %n more thing are not kept yet and are not saved.</numerusform>
            <numerusform>The answers to %1 and to %n more things are not kept yet and are not saved.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>feedwright::ConcernGroup</name>
    <message numerus="yes">
        <source>Each of %n</source>
        <comment>cautions that say the same</comment>
        <translation>
            <numerusform>Each of %n</numerusform>
            <numerusform>Each of %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Each of %n, open: %1</source>
        <comment>cautions, their places</comment>
        <translation>
            <numerusform>Each of %n, open: %1</numerusform>
            <numerusform>Each of %n, open: %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Each of %n, closed: %1</source>
        <comment>cautions, their places</comment>
        <translation>
            <numerusform>Each of %n, closed: %1</numerusform>
            <numerusform>Each of %n, closed: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>feedwright::ConcernList</name>
    <message numerus="yes">
        <source>%n to settle, the gravest first</source>
        <translation>
            <numerusform>%n to settle, the gravest first</numerusform>
            <numerusform>%n to settle, the gravest first</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n answered</source>
        <translation>
            <numerusform>%n answered</numerusform>
            <numerusform>%n answered</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>feedwright::FieldsForm</name>
    <message numerus="yes">
        <source>%n to mend</source>
        <comment>fields of a section</comment>
        <translation>
            <numerusform>%n to mend</numerusform>
            <numerusform>%n to mend</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wanted</source>
        <comment>fields of a section</comment>
        <translation>
            <numerusform>%n wanted</numerusform>
            <numerusform>%n wanted</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n given</source>
        <comment>fields of a section</comment>
        <translation>
            <numerusform>%n given</numerusform>
            <numerusform>%n given</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>feedwright::GraveCautions</name>
    <message numerus="yes">
        <source>%n more</source>
        <comment>cautions</comment>
        <translation>
            <numerusform>%n more</numerusform>
            <numerusform>%n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>feedwright::HelpWindow</name>
    <message numerus="yes">
        <source>%n page(s) found.</source>
        <translation>
            <numerusform>%n page found.</numerusform>
            <numerusform>%n pages found.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>feedwright::LimitsView</name>
    <message numerus="yes">
        <source>△ %n caution(s)</source>
        <translation>
            <numerusform>△ %n caution</numerusform>
            <numerusform>△ %n cautions</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n caution(s) below: %1</source>
        <comment>parts they are about</comment>
        <translation>
            <numerusform>%n caution below: %1</numerusform>
            <numerusform>%n cautions below: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>feedwright::MachineView</name>
    <message numerus="yes">
        <source>%n axis(es)</source>
        <translation>
            <numerusform>%n axis</numerusform>
            <numerusform>%n axes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n motor(s)</source>
        <translation>
            <numerusform>%n motor</numerusform>
            <numerusform>%n motors</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to settle</source>
        <translation>
            <numerusform>%n to settle</numerusform>
            <numerusform>%n to settle</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n output(s) for motors in all; the two motors of one axis get the same steps, each from an output of its own.</source>
        <translation>
            <numerusform>%n output for motors in all; the two motors of one axis get the same steps, each from an output of its own.</numerusform>
            <numerusform>%n outputs for motors in all; the two motors of one axis get the same steps, each from an output of its own.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>feedwright::RemediesView</name>
    <message numerus="yes">
        <source>Nothing known is over or close; %n limit(s) are open.</source>
        <translation>
            <numerusform>Nothing known is over or close; %n limit is open.</numerusform>
            <numerusform>Nothing known is over or close; %n limits are open.</numerusform>
        </translation>
    </message>
</context>
</TS>
