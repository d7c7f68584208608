#include "tests/app/console/program_run.h"
#include "tests/app/sheet/pump_circuit.h"

using namespace pumpwright;

TEST_CASE("bad use ends with status 2, says what is wrong and prints nothing else", "[console][bad-use]") {
    const CircuitFolder folder;
    const QString file = folder.with(QStringLiteral("a.pumpwright"), Circuit{});
    const QList<QStringList> commands{
        {QStringLiteral("check")},
        {QStringLiteral("check"), file, QStringLiteral("--csv")},
        {QStringLiteral("check"), file, QStringLiteral("extra")},
        {QStringLiteral("check"), file, QStringLiteral("--at-least"), QStringLiteral("panic")},
        {QStringLiteral("sheet"), file},
        {QStringLiteral("wires"), file, QStringLiteral("--json"), QStringLiteral("--csv")},
        {QStringLiteral("drive"), file, QStringLiteral("--csv"), QStringLiteral("--every"),
         QStringLiteral("0")},
        {QStringLiteral("drive"), file, QStringLiteral("--csv"), QStringLiteral("--every"),
         QStringLiteral("-1 s")},
        {QStringLiteral("drive"), file, QStringLiteral("--csv"), QStringLiteral("--every"),
         QStringLiteral("soon")},
        {QStringLiteral("drive"), file, QStringLiteral("--csv"), QStringLiteral("--every"),
         QStringLiteral("1 ns")},
        {QStringLiteral("--no-such-option")},
    };
    for (const QStringList& command : commands) {
        INFO(command.join(QLatin1Char(' ')).toStdString());
        const ProgramRun bad = run(command);
        CHECK(bad.status == 2);
        CHECK(bad.out.isEmpty());
        CHECK(bad.err.startsWith("pumpwright: "));
    }
}

TEST_CASE("a command with a slip of the pen is answered with the right one", "[console][bad-use]") {
    const ProgramRun bad = run({QStringLiteral("chek"), QStringLiteral("x.pumpwright")});
    CHECK(bad.status == 2);
    CHECK(bad.err.contains("\"check\""));
}

TEST_CASE("output that finds no room on the disk ends with status 3 and says so", "[console][bad-use]") {
    const CircuitFolder folder;
    QProcess process;
    process.setStandardOutputFile(QStringLiteral("/dev/full"));
    process.start(QStringLiteral(PUMPWRIGHT_PROGRAM),
                  {QStringLiteral("parts"), folder.with(QStringLiteral("a.pumpwright"), Circuit{})});
    REQUIRE(process.waitForFinished(30'000));
    CHECK(process.exitCode() == 3);
    CHECK(process.readAllStandardError().startsWith("pumpwright: The output cannot be written"));
}

TEST_CASE("the window without a display says what to do instead", "[console][bad-use]") {
    const CircuitFolder folder;
    const ProgramRun bad = run({folder.with(QStringLiteral("a.pumpwright"), Circuit{})});
    CHECK(bad.status == 2);
    CHECK(bad.err.contains("display"));
    CHECK(bad.err.contains("pumpwright check"));
}

TEST_CASE("help and version end with status 0 and name every command", "[console][help]") {
    const ProgramRun help = run({QStringLiteral("--help")});
    CHECK(help.status == 0);
    for (const char* word : {"check", "drive", "sheet", "wires", "parts", "Exit status", "safety-critical"}) {
        INFO(word);
        CHECK(help.out.contains(word));
    }
    CHECK(run({QStringLiteral("drive"), QStringLiteral("--help")}).out.contains("--every"));
    const ProgramRun version = run({QStringLiteral("--version")});
    CHECK(version.status == 0);
    CHECK(version.out.startsWith("pumpwright "));
}

TEST_CASE("a file that can't be read ends with status 3 and its place, whatever the command",
          "[console][bad-file]") {
    const CircuitFolder folder;
    const QList<QString> files{
        folder.path(QStringLiteral("missing.pumpwright")),
        folder.withText(QStringLiteral("empty.pumpwright"), ""),
        folder.withText(QStringLiteral("text.pumpwright"), "no JSON at all"),
        folder.withText(QStringLiteral("cut.pumpwright"), "{\"pumpwright\": 1, \"parts\": {"),
        folder.withText(QStringLiteral("other.pumpwright"), "{\"some\": \"thing\"}"),
        folder.withText(QStringLiteral("newer.pumpwright"), "{\"pumpwright\": 1000}"),
        folder.withText(QStringLiteral("deep.pumpwright"), QByteArray(10'000, '[')),
    };
    for (const QString& file : files) {
        for (const char* command : {"check", "drive", "wires", "parts"}) {
            INFO(command << " " << file.toStdString());
            const ProgramRun bad = run({QString::fromLatin1(command), file});
            CHECK(bad.status == 3);
            CHECK(bad.out.isEmpty());
            CHECK(bad.err.startsWith("pumpwright: "));
            CHECK(bad.err.contains(file.toUtf8()));
        }
    }
}

TEST_CASE("an output file that can't be written ends with status 3", "[console][bad-file]") {
    const CircuitFolder folder;
    const QString file = folder.with(QStringLiteral("a.pumpwright"), pumpCircuit());
    const QString nowhere = QStringLiteral("/nowhere/at/all/out");
    CHECK(run({QStringLiteral("sheet"), file, QStringLiteral("--out"), nowhere}).status == 3);
    CHECK(run({QStringLiteral("drive"), file, QStringLiteral("--chart"), nowhere}).status == 3);
}

TEST_CASE("a folder in place of a file is refused", "[console][bad-file]") {
    const CircuitFolder folder;
    CHECK(run({QStringLiteral("check"), folder.path(QStringLiteral("."))}).status == 3);
}
