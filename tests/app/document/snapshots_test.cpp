#include "app/desktop/document/document.h"
#include "app/desktop/document/snapshots.h"
#include "core/files/circuit_file.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"
#include "tests/support/test_seed.h"

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <iostream>
#include <random>

using namespace pumpwright;

namespace {

Circuit oneFuse() {
    return CircuitBuilder().part("fuse", "F1").build();
}

void moveFuse(Document& document, int x) {
    Part part = document.circuit().parts.at({"F1"});
    part.at.x = x;
    document.apply({"Move F1", {putPart({"F1"}, part)}});
}

bool appears(const Snapshots& snapshots) {
    return QTest::qWaitFor([&] { return QFile::exists(snapshots.file()); }, 2000);
}

/// What a killed program leaves: the files, and nobody who holds their lock.
LostWork leaveBehind(const QString& folder, const Circuit& circuit) {
    const QString file = folder + QStringLiteral("/lost.pumpwright");
    REQUIRE(writeCircuit(circuit, file.toStdString()));
    const auto lost = lostWork(folder);
    REQUIRE(lost.size() == 1);
    return lost.front();
}

} // namespace

TEST_CASE("a change is in the snapshot within a second, while changes go on", "[document][snapshots]") {
    const QTemporaryDir folder;
    Document document;
    document.startNew(oneFuse());
    const Snapshots snapshots(document, folder.path());
    QElapsedTimer clock;
    clock.start();
    int x = 0;
    while (!QFile::exists(snapshots.file()) && clock.elapsed() < 5000) {
        moveFuse(document, ++x); // a user who never pauses
        QTest::qWait(20);
    }
    REQUIRE(QFile::exists(snapshots.file()));
    moveFuse(document, 1000);
    REQUIRE(QTest::qWaitFor(
        [&] {
            const auto kept = readCircuit(snapshots.file().toStdString());
            return kept && kept->parts.at({"F1"}).at.x == 1000;
        },
        3000));
}

TEST_CASE("nothing is kept of a circuit without changes, after saving, or after the end",
          "[document][snapshots]") {
    const QTemporaryDir folder;
    Document document;
    document.startNew(oneFuse());
    {
        const Snapshots snapshots(document, folder.path());
        QTest::qWait(1000);
        CHECK_FALSE(QFile::exists(snapshots.file()));
        moveFuse(document, 7);
        REQUIRE(appears(snapshots));
        REQUIRE(document.save(folder.filePath(QStringLiteral("saved.txt"))));
        CHECK_FALSE(QFile::exists(snapshots.file()));
        moveFuse(document, 8);
        REQUIRE(appears(snapshots));
    }
    CHECK(lostWork(folder.path()).isEmpty());
    CHECK(QDir(folder.path()).entryList({QStringLiteral("*.pumpwright")}).isEmpty());
}

TEST_CASE("work of a window that is open is not offered to others", "[document][snapshots]") {
    const QTemporaryDir folder;
    Document document;
    document.startNew(oneFuse());
    const Snapshots snapshots(document, folder.path());
    moveFuse(document, 7);
    REQUIRE(appears(snapshots));
    CHECK(lostWork(folder.path()).isEmpty());
}

TEST_CASE("recovered work is modified, keeps its file's name, and is safe again at once",
          "[document][snapshots]") {
    const QTemporaryDir folder;
    const LostWork work = leaveBehind(folder.path(), oneFuse());
    const auto recovered = recover(work);
    REQUIRE(recovered);
    CHECK(recovered->circuit == oneFuse());
    Document document;
    const Snapshots snapshots(document, folder.path());
    document.restore(recovered->circuit, QStringLiteral("/van.pumpwright"));
    CHECK(document.isModified());
    CHECK(document.path() == QStringLiteral("/van.pumpwright"));
    CHECK(appears(snapshots));
}

TEST_CASE("work that brings the program down twice is set aside and named", "[document][snapshots]") {
    const QTemporaryDir folder;
    REQUIRE(recover(leaveBehind(folder.path(), oneFuse())));
    const auto again = lostWork(folder.path()); // as after a crash while it was being opened
    REQUIRE(again.size() == 1);
    const auto refused = recover(again.front());
    REQUIRE_FALSE(refused);
    CHECK(QFile::exists(QString::fromStdString(refused.error().place.file)));
    CHECK(lostWork(folder.path()).isEmpty());
}

TEST_CASE("thrown away is gone", "[document][snapshots]") {
    const QTemporaryDir folder;
    discard(leaveBehind(folder.path(), oneFuse()));
    CHECK(lostWork(folder.path()).isEmpty());
}

namespace {

/// What the victim said last: how many edits it had made at which time of its own clock.
struct Said {
    int edits = 0;
    qint64 at_ms = 0;
};

std::vector<Said> readReport(const QByteArray& output) {
    std::vector<Said> said;
    const auto lines = output.split('\n');
    for (const QByteArray& line : lines) {
        const auto words = line.split(' ');
        if (words.size() == 2) { // the last may be half a line
            said.push_back({words[0].toInt(), words[1].toLongLong()});
        }
    }
    return said;
}

/// Ten in every run; PUMPWRIGHT_KILLS asks for more.
int kills() {
    bool isNumber = false;
    const int asked = qEnvironmentVariableIntValue("PUMPWRIGHT_KILLS", &isNumber);
    return isNumber && asked > 0 ? asked : 10;
}

} // namespace

TEST_CASE("a program killed at any moment loses at most two seconds of edits, and no saved file",
          "[document][snapshots][kill]") {
    const std::uint64_t seed = testSeed();
    INFO("PUMPWRIGHT_SEED=" << seed);
    std::mt19937_64 random(seed);
    qint64 mostLost_ms = 0;
    for (int round = 0; round < kills(); ++round) {
        const QTemporaryDir folder;
        const QString saved = folder.filePath(QStringLiteral("van.pumpwright"));
        QProcess victim;
        QStringList arguments{folder.filePath(QStringLiteral("unsaved"))};
        const bool saves = round % 2 == 0; // the other half never do: there the snapshot is all that is left
        if (saves) {
            arguments << saved;
        }
        victim.start(QStringLiteral(PUMPWRIGHT_VICTIM), arguments);
        REQUIRE(victim.waitForReadyRead(10000));
        QTest::qWait(1200 + static_cast<int>(random() % 2000));
        victim.kill();
        REQUIRE(victim.waitForFinished());
        const std::vector<Said> said = readReport(victim.readAllStandardOutput());
        REQUIRE_FALSE(said.empty());
        int kept = 0;
        if (saves) {
            const auto whole = readCircuit(saved.toStdString());
            REQUIRE(whole);
            kept = static_cast<int>(whole->parts.size());
        }
        const auto lost = lostWork(folder.filePath(QStringLiteral("unsaved")));
        REQUIRE((saves || lost.size() == 1)); // with a save at this very moment there may be nothing to offer
        if (!lost.isEmpty()) {
            const auto recovered = recover(lost.front());
            REQUIRE(recovered);
            kept = std::max(kept, static_cast<int>(recovered->circuit.parts.size()));
        }
        const auto first =
            std::find_if(said.begin(), said.end(), [&](const Said& one) { return one.edits > kept; });
        const qint64 lost_ms = first == said.end() ? 0 : said.back().at_ms - first->at_ms;
        INFO("killed after " << said.back().edits << " edits, " << kept << " kept, " << lost_ms
                             << " ms lost");
        CHECK(lost_ms <= 2000);
        CHECK(kept > 0);
        mostLost_ms = std::max(mostLost_ms, lost_ms);
    }
    std::cout << kills() << " kills, at most " << mostLost_ms << " ms of edits lost\n";
}
