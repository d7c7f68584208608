#include "tests/app/console/circuit_files.h"

#include <QFile>

using namespace pumpwright;
using nlohmann::json;

namespace {

/// The times of a table and one of its columns: a gauge does not see the rest.
QByteArray onlyColumn(const QByteArray& table, const QByteArray& name) {
    const QList<QByteArray> lines = table.trimmed().split('\n');
    const qsizetype column = lines.front().split(',').indexOf(name);
    REQUIRE(column > 0);
    QByteArray kept;
    for (const QByteArray& line : lines) {
        const QList<QByteArray> cells = line.split(',');
        kept += cells.front() + ',' + cells.at(column) + '\n';
    }
    return kept;
}

} // namespace

TEST_CASE("ranges of a spread join to the bytes of the whole", "[console][spread]") {
    const auto rows = [](const char* from, const char* count) {
        return run({QStringLiteral("spread"), pumpFile(), QStringLiteral("--csv"), QStringLiteral("--from"),
                    QString::fromLatin1(from), QStringLiteral("--count"), QString::fromLatin1(count)})
            .out;
    };
    const QByteArray whole = rows("0", "4");
    const QByteArray second = rows("2", "2");
    CHECK(whole == rows("0", "2") + second.mid(second.indexOf('\n') + 1));
    const QString first = folder().withText(QStringLiteral("first.csv"), rows("0", "2"));
    const QString last = folder().withText(QStringLiteral("last.csv"), second);
    for (const char* form : {"--json", "--csv"}) {
        const QString asked = QString::fromLatin1(form);
        CHECK(run({QStringLiteral("spread"), pumpFile(), asked, QStringLiteral("--join"), last,
                   QStringLiteral("--join"), first})
                  .out == run({QStringLiteral("spread"), pumpFile(), asked, QStringLiteral("--count"),
                               QStringLiteral("4")})
                              .out);
    }
    CHECK(run({QStringLiteral("spread"), emptyFile(), QStringLiteral("--join"), first}).status == 2);
    const json output = parsed(run({QStringLiteral("spread"), pumpFile(), QStringLiteral("--json"),
                                    QStringLiteral("--count"), QStringLiteral("3")}));
    CHECK(output.at("influences").size() > 5);
    CHECK(output.at("finished") == 3);
    CHECK(output.at("chatters").at("low") <= output.at("chatters").at("share"));
    CHECK(
        run({QStringLiteral("spread"), pumpFile(), QStringLiteral("--count"), QStringLiteral("3")}).status ==
        0);
}

TEST_CASE("sweep prints a curve with its threshold, or a map", "[console][sweep]") {
    const auto sweep = [](const QStringList& options) {
        return run(QStringList{QStringLiteral("sweep"), pumpFile()} + options);
    };
    const QString over = QStringLiteral("--over");
    const QString length = QStringLiteral("W2.length_m=0.1 m..2 m");
    const QString points = QStringLiteral("--points=3");
    const ProgramRun text = sweep({over, length, points});
    CHECK(text.status == 0);
    CHECK(text.out.contains("Result"));
    CHECK(longestLine(text.out) <= 100);
    const json curve = parsed(sweep({over, length, points, QStringLiteral("--json")}));
    CHECK(curve.at("points").size() == 3);
    CHECK(curve.at("points").at(2).at("W2.length_m") == 2.0);
    const ProgramRun map = sweep({over, length, over, QStringLiteral("W3.length_m=1..2"), points,
                                  QStringLiteral("--csv"), QStringLiteral("--result=pump-starts")});
    CHECK(map.out.count('\n') == 10);
    CHECK(map.out.startsWith("W2.length_m,W3.length_m,status"));
}

TEST_CASE("a sweep that makes no sense says why", "[console][sweep]") {
    const auto complaint = [](const QStringList& options) {
        const ProgramRun ran = run(QStringList{QStringLiteral("sweep"), pumpFile()} + options);
        CHECK(ran.status == 2);
        return ran.err;
    };
    const QString over = QStringLiteral("--over");
    CHECK(complaint({}).contains("--over"));
    CHECK(complaint({over, QStringLiteral("W2.length_m")}).contains("is no range"));
    CHECK(complaint({over, QStringLiteral("Z9.length_m=1..2")}).contains("\"Z9\""));
    CHECK(complaint({over, QStringLiteral("W2.length_m=1..5 km")}).contains("Allowed is"));
    CHECK(complaint({over, QStringLiteral("W2.length_m=1..1")}).contains("begins where it ends"));
    CHECK(complaint({over, QStringLiteral("W2.length_m=1..2"), QStringLiteral("--result=beauty")})
              .contains("beauty"));
    CHECK(complaint({over, QStringLiteral("W2.length_m=1..2"), QStringLiteral("--resolution=0 m")})
              .contains("--resolution"));
}

TEST_CASE("fit brings a value back from the log that a drive was written to", "[console][fit]") {
    Circuit circuit = pumpCircuit();
    circuit.plan.duration_s = 8;
    const QString truth = folder().with(QStringLiteral("truth.pumpwright"), circuit);
    const QByteArray drive = run({QStringLiteral("drive"), truth, QStringLiteral("--csv")}).out;
    const QString log = folder().withText(QStringLiteral("log.csv"), onlyColumn(drive, "A1:vacuum [Pa]"));
    Part& pump = circuit.parts.at(PartId{"M1"});
    pump.values["freeSpeed_m3ps"] = 4e-4;
    const QString start = folder().with(QStringLiteral("start.pumpwright"), circuit);
    const QStringList fit{QStringLiteral("fit"), start, log, QStringLiteral("--value"),
                          QStringLiteral("M1.freeSpeed_m3ps")};
    const QString out = folder().path(QStringLiteral("fitted.pumpwright"));
    const ProgramRun ran = run(fit + QStringList{QStringLiteral("--json"), QStringLiteral("--out"), out});
    const json output = parsed(ran);
    CHECK(ran.status == 0);
    const double before = output.at("values").at(0).at("before");
    const double fitted = output.at("values").at(0).at("fitted");
    CHECK(before == 4e-4);
    CHECK(std::abs(fitted - 6e-4) < 0.02 * 6e-4);
    CHECK(QFile::exists(out));
    CHECK(longestLine(run(fit).out) <= 100);
    CHECK(run({QStringLiteral("fit"), start, log, QStringLiteral("--value"), QStringLiteral("M1.beauty")})
              .status == 2);
    CHECK(run({QStringLiteral("fit"), start, start, QStringLiteral("--value"),
               QStringLiteral("M1.freeSpeed_m3ps")})
              .status == 3);
}

TEST_CASE("plan makes drives, from a seed or from a speed trace", "[console][plan]") {
    const auto plan = [](const QStringList& options) {
        return run(QStringList{QStringLiteral("plan"), QStringLiteral("samples/put-right.pumpwright")} +
                   options);
    };
    const json city = parsed(plan({QStringLiteral("--make=city"), QStringLiteral("--json")}));
    CHECK(city.at("presses").size() > 10);
    const QString out = folder().path(QStringLiteral("planned.pumpwright"));
    const QString speed = folder().withText(QStringLiteral("speed.csv"),
                                            "time,speed\n0,90\n5,90\n6,80\n7,70\n8,60\n9,50\n10,50\n15,50\n");
    const ProgramRun traced = plan({QStringLiteral("--speed"), speed, QStringLiteral("--out"), out});
    CHECK(traced.status == 0);
    CHECK(traced.out.contains("1 presses in 15 s"));
    CHECK(run({QStringLiteral("drive"), out}).status == 0);
    CHECK(plan({}).status == 2);
    CHECK(plan({QStringLiteral("--make=moon")}).status == 2);
    CHECK(plan({QStringLiteral("--make=city"), QStringLiteral("--duration=blue")}).status == 3);
    CHECK(plan({QStringLiteral("--speed=nowhere.csv")}).status == 3);
}
