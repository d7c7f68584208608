#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"
#include "core/parts/part_kind.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <QElapsedTimer>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>

using namespace pumpwright;

namespace {

/// A lamp on a battery: nothing to say against it but that there is no fuse.
Circuit lampCircuit(double duration_s) {
    DrivePlan plan;
    plan.duration_s = duration_s;
    return CircuitBuilder()
        .part("supply", "G1")
        .part("lamp", "P1")
        .part("ground", "X1")
        .part("ground", "X2")
        .wire("G1.30", "P1.1")
        .wire("P1.2", "X1.31")
        .wire("G1.31", "X2.31")
        .plan(plan)
        .build();
}

bool waitUntilDone(const Analysis& analysis) {
    return QTest::qWaitFor([&] { return !analysis.isRunning(); }, 20'000);
}

bool speaksOf(const Analysis& analysis, const PartId& id) {
    const auto& findings = analysis.findings();
    return std::any_of(findings.begin(), findings.end(), [&](const Finding& finding) {
        return std::find(finding.parts.begin(), finding.parts.end(), id) != finding.parts.end();
    });
}

} // namespace

TEST_CASE("after an edit the analysis ends with findings and a drive of the edited circuit", "[document]") {
    Document document;
    Analysis analysis(document);
    QSignalSpy drives(&analysis, &Analysis::driveChanged);
    document.startNew(lampCircuit(5));
    REQUIRE(analysis.isRunning());
    REQUIRE(waitUntilDone(analysis));
    REQUIRE(analysis.drive());
    CHECK(analysis.drive()->status == DriveStatus::Finished);
    CHECK(analysis.drive()->recording.wire({"w1"}, probe::kCurrent) != nullptr);
    CHECK_FALSE(speaksOf(analysis, {"R1"}));

    const Part loose = newPart(*findPartKind("resistor"), "R1", {9, 9});
    document.apply({"Place R1", {putPart({"R1"}, loose)}});
    REQUIRE(waitUntilDone(analysis));
    CHECK(speaksOf(analysis, {"R1"}));
    CHECK(drives.count() >= 2);
}

TEST_CASE("a run that edits overtake is never shown", "[document]") {
    Document document;
    Analysis analysis(document);
    document.startNew(lampCircuit(3));
    std::vector<double> shown_s;
    QObject::connect(&analysis, &Analysis::driveChanged, [&] {
        shown_s.push_back(analysis.drive()->recording.duration_s);
        CHECK(analysis.drive()->recording.duration_s == Approx(document.circuit().plan.duration_s));
    });
    for (int i = 0; i < 40; ++i) {
        DrivePlan plan = document.circuit().plan;
        plan.duration_s = 100 + i;
        document.apply({"Plan", {replacePlan(plan)}});
        QTest::qWait(i % 5);
    }
    REQUIRE(waitUntilDone(analysis));
    REQUIRE_FALSE(shown_s.empty());
    CHECK(shown_s.back() == Approx(139));
}

TEST_CASE("moving and turning parts asks for a new check over the same drive", "[document]") {
    Document document;
    Analysis analysis(document);
    document.startNew(lampCircuit(2));
    REQUIRE(waitUntilDone(analysis));
    const auto drive = analysis.drive();
    QSignalSpy driven(&analysis, &Analysis::driveChanged);
    QSignalSpy checked(&analysis, &Analysis::findingsChanged);
    Part part = document.circuit().parts.at({"P1"});
    part.at.x += 5;
    part.quarterTurns = 1;
    part.labelFrom = LabelOffset{0, 30};
    document.apply({"Move P1", {putPart({"P1"}, part)}});
    REQUIRE(waitUntilDone(analysis));
    CHECK(driven.isEmpty());
    CHECK(analysis.drive() == drive);
    CHECK(checked.count() == 1);
}

TEST_CASE(
    "a part that moves while the drive runs does not start it anew, and is checked where it is at the end",
    "[document]") {
    Document document;
    Analysis analysis(document);
    document.startNew(lampCircuit(20'000));
    Part part = document.circuit().parts.at({"P1"});
    QSignalSpy driven(&analysis, &Analysis::driveChanged);
    QSignalSpy checked(&analysis, &Analysis::findingsChanged);
    part.at.x += 5;
    document.apply({"Move P1", {putPart({"P1"}, part)}});
    REQUIRE(analysis.isRunning());
    REQUIRE(waitUntilDone(analysis));
    CHECK(driven.count() == 1);
    CHECK(checked.count() == 3); // before the drive, after it, and where the part is now
}

TEST_CASE("closing in the middle of a run does not wait for its end", "[document]") {
    for (int i = 0; i < 20; ++i) {
        Document document;
        auto analysis = std::make_unique<Analysis>(document);
        document.startNew(lampCircuit(100'000));
        QTest::qWait(i % 4);
        QElapsedTimer timer;
        timer.start();
        analysis.reset();
        CHECK(timer.elapsed() < 2'000);
    }
}

TEST_CASE("the cursor tells once when it moves", "[document]") {
    Document document;
    Analysis analysis(document);
    QSignalSpy moves(&analysis, &Analysis::cursorMoved);
    analysis.setCursor(2.5);
    analysis.setCursor(2.5);
    CHECK(moves.count() == 1);
    CHECK(analysis.cursor_s() == 2.5);
}
