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

TEST_CASE("a program killed at any moment loses at most two seconds of edits",
          "[document][snapshots][kill]") {
    const std::uint64_t seed = testSeed();
    INFO("PUMPWRIGHT_SEED=" << seed);
    std::mt19937_64 random(seed);
    for (int round = 0; round < 8; ++round) {
        const QTemporaryDir folder;
        QProcess victim;
        victim.start(QStringLiteral(PUMPWRIGHT_VICTIM), {folder.path()});
        REQUIRE(victim.waitForReadyRead(10000));
        QTest::qWait(1500 + static_cast<int>(random() % 1000));
        victim.kill();
        REQUIRE(victim.waitForFinished());
        const int made = victim.readAllStandardOutput().trimmed().split('\n').last().toInt();
        const auto lost = lostWork(folder.path());
        REQUIRE(lost.size() == 1);
        const auto recovered = recover(lost.front());
        REQUIRE(recovered);
        const int kept = static_cast<int>(recovered->circuit.parts.size());
        INFO(made << " edits made, " << kept << " kept");
        CHECK(made - kept <= 200); // one each 10 ms
        CHECK(kept > 0);
    }
}
