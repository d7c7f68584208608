#include "tests/app/console/circuit_files.h"

#include <QDir>
#include <QFile>
#include <QImage>

#include <nlohmann/json.hpp>

using namespace pumpwright;
using nlohmann::json;

namespace {

bool holdsRule(const json& output, const std::string& rule) {
    for (const json& finding : output.at("findings")) {
        if (finding.at("rule") == rule) {
            return true;
        }
    }
    return false;
}

} // namespace

TEST_CASE("check prints findings for people and ends with status 1", "[console][check]") {
    const ProgramRun checked = run({QStringLiteral("check"), pumpFile()});
    CHECK(checked.status == 1);
    CHECK(checked.err.isEmpty());
    CHECK(checked.out.contains("K1"));
    CHECK(checked.out.contains("Remedy:"));
    CHECK(checked.out.contains("Limit from:"));
    CHECK(longestLine(checked.out) <= 100);
}

TEST_CASE("check of a circuit without findings ends with status 0 and promises nothing", "[console][check]") {
    const ProgramRun checked = run({QStringLiteral("check"), emptyFile()});
    CHECK(checked.status == 0);
    CHECK(checked.out.contains("no proof that the circuit is safe"));
}

TEST_CASE("check --json lists every finding with all its fields", "[console][check]") {
    const json output = parsed(run({QStringLiteral("check"), pumpFile(), QStringLiteral("--json")}));
    CHECK(output.at("file") == pumpFile().toStdString());
    CHECK(output.at("checkSum").get<std::string>().size() == 8);
    CHECK(output.at("driveFinished") == true);
    CHECK(holdsRule(output, "coil-without-suppression"));
    for (const json& finding : output.at("findings")) {
        for (const char* key : {"rule", "signalWord", "title", "parts", "wires", "hoses", "what", "value",
                                "limit", "unit", "source", "why", "remedies", "at_s", "waiver"}) {
            INFO(key);
            CHECK(finding.contains(key));
        }
        CHECK_FALSE(finding.at("remedies").empty());
    }
}

TEST_CASE("--at-least moves the signal word that counts for the exit status", "[console][check]") {
    const json output = parsed(run({QStringLiteral("check"), pumpFile(), QStringLiteral("--json")}));
    bool reached = false;
    for (const char* word : {"DANGER", "WARNING", "CAUTION", "NOTICE"}) {
        INFO(word);
        reached = reached || output.at("open").at(word) > 0;
        const ProgramRun checked = run({QStringLiteral("check"), pumpFile(), QStringLiteral("--at-least"),
                                        QString::fromLatin1(word).toLower()});
        CHECK(checked.status == (reached ? 1 : 0));
    }
}

TEST_CASE("an accepted finding does not count for the exit status", "[console][check]") {
    const json before = parsed(run({QStringLiteral("check"), pumpFile(), QStringLiteral("--json")}));
    Circuit circuit = pumpCircuit();
    for (const json& finding : before.at("findings")) {
        Waiver waiver{finding.at("rule"), {}, "tried on the bench", "ab", finding.at("value")};
        for (const char* key : {"parts", "wires", "hoses"}) {
            for (const json& subject : finding.at(key)) {
                waiver.subjects.push_back(subject.at("id"));
            }
        }
        std::sort(waiver.subjects.begin(), waiver.subjects.end());
        circuit.waivers.push_back(waiver);
    }
    const QString file = folder().with(QStringLiteral("waived.pumpwright"), circuit);
    const ProgramRun checked = run({QStringLiteral("check"), file, QStringLiteral("--at-least=notice")});
    INFO(checked.out.toStdString());
    CHECK(checked.status == 0);
    CHECK(checked.out.contains("tried on the bench (ab)"));
}

TEST_CASE("drive prints vacuum, presses, motors, contacts and events", "[console][drive]") {
    const ProgramRun driven = run({QStringLiteral("drive"), pumpFile()});
    CHECK(driven.status == 0);
    for (const char* words :
         {"Vacuum below ambient", "A1", "Brake presses", "Motors", "M1", "Contacts", "Events"}) {
        INFO(words);
        CHECK(driven.out.contains(words));
    }
    CHECK(longestLine(driven.out) <= 100);
}

TEST_CASE("drive --json tells each press and each start of the pump", "[console][drive]") {
    const json output = parsed(run({QStringLiteral("drive"), pumpFile(), QStringLiteral("--json")}));
    CHECK(output.at("status") == "finished");
    CHECK(output.at("presses").size() == 2);
    CHECK(output.at("motors").at(0).at("part").at("reference") == "M1");
    CHECK(output.at("motors").at(0).at("starts").get<int>() >= 1);
}

TEST_CASE("drive --csv prints a head and a row at each asked time, all of one length", "[console][drive]") {
    const ProgramRun driven = run({QStringLiteral("drive"), pumpFile(), QStringLiteral("--csv"),
                                   QStringLiteral("--every"), QStringLiteral("500 ms")});
    CHECK(driven.status == 0);
    const QList<QByteArray> lines = driven.out.trimmed().split('\n');
    REQUIRE(lines.size() == 62); // head, and 0 s to 30 s by half a second
    CHECK(lines[0].startsWith("time [s],"));
    CHECK(lines[0].contains("A1:vacuum [Pa]"));
    for (const QByteArray& line : lines) {
        CHECK(line.count(',') == lines[0].count(','));
    }
    CHECK(lines[1].startsWith("0,"));
    CHECK(lines[61].startsWith("30,"));
}

TEST_CASE("drive --chart writes the chart without a display", "[console][drive]") {
    const QString png = folder().path(QStringLiteral("chart.png"));
    const ProgramRun driven = run({QStringLiteral("drive"), pumpFile(), QStringLiteral("--chart"), png});
    CHECK(driven.status == 0);
    CHECK(driven.err.isEmpty());
    CHECK_FALSE(QImage(png).isNull());
}

TEST_CASE("sheet writes a PDF without a display", "[console][sheet]") {
    const QString pdf = folder().path(QStringLiteral("sheet.pdf"));
    const ProgramRun written = run({QStringLiteral("sheet"), pumpFile(), QStringLiteral("--out"), pdf});
    CHECK(written.status == 0);
    CHECK(written.err.isEmpty());
    QFile file(pdf);
    REQUIRE(file.open(QIODevice::ReadOnly));
    CHECK(file.read(5) == "%PDF-");
}

TEST_CASE("wires and parts print tables for people", "[console][tables]") {
    const ProgramRun wires = run({QStringLiteral("wires"), pumpFile()});
    CHECK(wires.status == 0);
    CHECK(wires.out.contains("W1"));
    CHECK(wires.out.contains("H1"));
    CHECK(longestLine(wires.out) <= 104);
    const ProgramRun parts = run({QStringLiteral("parts"), pumpFile()});
    CHECK(parts.status == 0);
    CHECK(parts.out.contains("Total"));
    CHECK(longestLine(parts.out) <= 100);
}

TEST_CASE("wires --json tells the fuse before each wire", "[console][tables]") {
    const json output = parsed(run({QStringLiteral("wires"), pumpFile(), QStringLiteral("--json")}));
    CHECK(output.at("wires").size() == pumpCircuit().wires.size());
    CHECK(output.at("hoses").size() == pumpCircuit().hoses.size());
    for (const json& wire : output.at("wires")) {
        if (wire.at("to").at("reference") == "M1") {
            CHECK(wire.at("fuses").at(0).at("reference") == "F1");
            CHECK(wire.at("unfused") == false);
        }
    }
}

TEST_CASE("wires --csv and parts --csv have one row for each wire and line", "[console][tables]") {
    const ProgramRun wires = run({QStringLiteral("wires"), pumpFile(), QStringLiteral("--csv")});
    CHECK(wires.out.startsWith("Wire,From,From terminal,"));
    CHECK(wires.out.count('\n') == static_cast<qsizetype>(pumpCircuit().wires.size()) + 1);
    const json bill = parsed(run({QStringLiteral("parts"), pumpFile(), QStringLiteral("--json")}));
    const ProgramRun parts = run({QStringLiteral("parts"), pumpFile(), QStringLiteral("--csv")});
    CHECK(parts.out.count('\n') == static_cast<qsizetype>(bill.at("lines").size()) + 2); // head and total
}

TEST_CASE("the same command prints the same bytes, and none that steers a terminal", "[console]") {
    const QList<QStringList> commands{{QStringLiteral("check"), pumpFile()},
                                      {QStringLiteral("check"), pumpFile(), QStringLiteral("--json")},
                                      {QStringLiteral("drive"), pumpFile()},
                                      {QStringLiteral("wires"), pumpFile()},
                                      {QStringLiteral("parts"), pumpFile()}};
    for (const QStringList& command : commands) {
        INFO(command.join(QLatin1Char(' ')).toStdString());
        const ProgramRun once = run(command);
        CHECK(once.out == run(command).out);
        CHECK_FALSE(once.out.contains('\x1b'));
        CHECK_FALSE(once.err.contains('\x1b'));
    }
}

TEST_CASE("every sample checks, drives, prints and lists", "[console][samples]") {
    const QDir samples(QStringLiteral(PUMPWRIGHT_SOURCE_DIR "/samples"));
    const QFileInfoList files = samples.entryInfoList({QStringLiteral("*.pumpwright")}, QDir::Files);
    REQUIRE(files.size() >= 4);
    for (const QFileInfo& info : files) {
        const QString file = info.filePath();
        const QString pdf = folder().path(info.completeBaseName() + QStringLiteral(".pdf"));
        INFO(file.toStdString());
        CHECK(parsed(run({QStringLiteral("check"), file, QStringLiteral("--json")})).at("driveFinished") ==
              true);
        CHECK(run({QStringLiteral("drive"), file}).status == 0);
        CHECK(run({QStringLiteral("sheet"), file, QStringLiteral("--out"), pdf,
                   QStringLiteral("--without-faults")})
                  .status == 0);
        CHECK(run({QStringLiteral("wires"), file}).status == 0);
        CHECK(run({QStringLiteral("parts"), file}).status == 0);
    }
}

TEST_CASE("the first try has the faults that its cure has not", "[console][samples]") {
    const QString samples = QStringLiteral(PUMPWRIGHT_SOURCE_DIR "/samples/");
    const auto check = [&](const char* name) {
        return parsed(
            run({QStringLiteral("check"), samples + QString::fromLatin1(name), QStringLiteral("--json")}));
    };
    const json first = check("first-try.pumpwright");
    const json cured = check("put-right.pumpwright");
    for (const char* rule : {"coil-without-suppression", "relay-chatter", "wire-over-capacity"}) {
        INFO(rule);
        CHECK(holdsRule(first, rule));
        CHECK_FALSE(holdsRule(cured, rule));
    }
    for (const char* word : {"DANGER", "WARNING", "CAUTION"}) {
        CHECK(cured.at("open").at(word) == 0);
    }
}

TEST_CASE("trials prints the circuit and its trials side by side", "[console][trials]") {
    const QString file = QStringLiteral(PUMPWRIGHT_SOURCE_DIR "/samples/six-ideas.pumpwright");
    const ProgramRun text = run({QStringLiteral("trials"), file});
    CHECK(text.status == 0);
    CHECK(text.out.contains("chatter"));
    CHECK(longestLine(text.out) <= 100);
    const json output = parsed(run({QStringLiteral("trials"), file, QStringLiteral("--json")}));
    REQUIRE(output.at("trials").size() == 7);
    CHECK(output.at("trials").at(0).at("id") == "");
    CHECK(output.at("trials").at(0).at("chatters") == true);
    const ProgramRun rows = run({QStringLiteral("trials"), file, QStringLiteral("--csv")});
    CHECK(rows.out.count('\n') == 8);
    CHECK(rows.out.startsWith("id,name,status,message,chatters,"));
}

TEST_CASE("trials of a circuit without any says so", "[console][trials]") {
    const ProgramRun text = run({QStringLiteral("trials"), emptyFile()});
    CHECK(text.status == 0);
    CHECK(text.out.contains("holds no trials"));
}

TEST_CASE("breakdowns are told worst first", "[console][breakdowns]") {
    const json output = parsed(run({QStringLiteral("breakdowns"), pumpFile(), QStringLiteral("--json")}));
    REQUIRE_FALSE(output.at("breakdowns").empty());
    for (const char* key :
         {"broken", "consequence", "presses", "lackingPresses", "worst_share", "lostAt_s", "warnedAt_s",
          "noticed", "openedFuses", "overheatedWires", "stopped", "runsOn", "status", "message"}) {
        CHECK(output.at("breakdowns").at(0).contains(key));
    }
    const ProgramRun text = run({QStringLiteral("breakdowns"), pumpFile()});
    CHECK(text.status == 0);
    CHECK(longestLine(text.out) <= 100);
    const ProgramRun rows = run({QStringLiteral("breakdowns"), pumpFile(), QStringLiteral("--csv")});
    CHECK(rows.out.count('\n') == static_cast<qsizetype>(output.at("breakdowns").size()) + 1);
}

TEST_CASE("compare tells what differs, and ends with status 0 only where nothing does",
          "[console][compare]") {
    const QString firstTry = QStringLiteral("samples/first-try.pumpwright");
    const QString putRight = QStringLiteral("samples/put-right.pumpwright");
    CHECK(run({QStringLiteral("compare"), putRight, putRight}).status == 0);
    const ProgramRun compared = run({QStringLiteral("compare"), firstTry, putRight});
    CHECK(compared.status == 1);
    CHECK(compared.out.contains("F2 fuse"));
    const ProgramRun asJson = run({QStringLiteral("compare"), firstTry, putRight, QStringLiteral("--json")});
    CHECK(asJson.out.contains("\"movedParts\""));
    CHECK(run({QStringLiteral("compare"), putRight, QStringLiteral("nowhere.pumpwright")}).status == 3);
}

TEST_CASE("nets prints each net with its terminals", "[console][tables]") {
    const ProgramRun nets = run({QStringLiteral("nets"), pumpFile(), QStringLiteral("--csv")});
    CHECK(nets.status == 0);
    CHECK(nets.out.contains("K1:30"));
}

TEST_CASE("schematic and sheet are written in the asked form, and no other is taken", "[console][sheet]") {
    const QString svg = folder().path(QStringLiteral("circuit.svg"));
    CHECK(run({QStringLiteral("schematic"), pumpFile(), QStringLiteral("--out"), svg}).status == 0);
    CHECK(QFile::exists(svg));
    const QString pdf = folder().path(QStringLiteral("a3.pdf"));
    const QStringList sheet{QStringLiteral("sheet"), pumpFile(), QStringLiteral("--out"), pdf,
                            QStringLiteral("--paper")};
    CHECK(run(sheet + QStringList{QStringLiteral("A3")}).status == 0);
    CHECK(run(sheet + QStringList{QStringLiteral("A9")}).status == 2);
}
