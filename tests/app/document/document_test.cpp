#include "app/desktop/document/document.h"
#include "core/files/circuit_file.h"
#include "core/parts/part_kind.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>

#include <random>

using namespace pumpwright;

namespace {

Circuit twoParts() {
    return CircuitBuilder().part("fuse", "F1").part("resistor", "R1").wire("F1.2", "R1.1").build();
}

Edit moveTo(const Circuit& circuit, const std::string& id, int x) {
    Part part = circuit.parts.at({id});
    part.at.x = x;
    return {"Move " + id, {putPart({id}, part)}};
}

void makeRandomEdit(Document& document, std::mt19937& random) {
    const Circuit& circuit = document.circuit();
    if (random() % 3 == 0 || circuit.parts.empty()) {
        const auto kinds = partKinds();
        const PartKind& kind = *kinds[random() % kinds.size()];
        document.apply({"Place", {putPart(freePartId(circuit), newPart(kind, "X", {1, 2}))}});
    } else {
        const auto offset = static_cast<std::ptrdiff_t>(random() % circuit.parts.size());
        const std::string id = std::next(circuit.parts.begin(), offset)->first.text;
        document.apply(random() % 4 == 0 ? removalOfPart(circuit, {id})
                                         : moveTo(circuit, id, static_cast<int>(random() % 50)));
    }
}

} // namespace

TEST_CASE("undo takes an edit back to the same bytes and redo makes it again", "[document]") {
    Document document;
    document.startNew(twoParts());
    const std::string before = circuitText(document.circuit());
    document.apply(moveTo(document.circuit(), "F1", 7));
    const std::string after = circuitText(document.circuit());
    REQUIRE(after != before);

    document.undoStack().undo();
    CHECK(circuitText(document.circuit()) == before);
    document.undoStack().redo();
    CHECK(circuitText(document.circuit()) == after);
    CHECK(document.undoStack().undoText() == QStringLiteral("Move F1"));
}

TEST_CASE("an edit that changes nothing leaves no step", "[document]") {
    Document document;
    document.startNew(twoParts());
    document.apply(moveTo(document.circuit(), "F1", document.circuit().parts.at({"F1"}).at.x));
    document.apply({"Delete", {takePart({"not there"})}});
    document.apply({"Limits", {replaceLimits(document.circuit().limits)}});
    CHECK(document.undoStack().count() == 0);
    CHECK_FALSE(document.isModified());
}

TEST_CASE("edits with one key join into one step, and a join that ends where it began is none",
          "[document]") {
    Document document;
    document.startNew(twoParts());
    const std::string before = circuitText(document.circuit());
    const int start = document.circuit().parts.at({"F1"}).at.x;
    for (const int x : {start + 1, start + 2, start + 3}) {
        document.applyMerging(moveTo(document.circuit(), "F1", x), QStringLiteral("nudge"));
    }
    CHECK(document.undoStack().count() == 1);
    document.undoStack().undo();
    CHECK(circuitText(document.circuit()) == before);
    document.undoStack().redo();
    CHECK(document.circuit().parts.at({"F1"}).at.x == start + 3);

    document.applyMerging(moveTo(document.circuit(), "F1", start), QStringLiteral("nudge"));
    CHECK(document.undoStack().count() == 0);
    CHECK(circuitText(document.circuit()) == before);
}

TEST_CASE("edits with other keys stay steps of their own", "[document]") {
    Document document;
    document.startNew(twoParts());
    document.applyMerging(moveTo(document.circuit(), "F1", 41), QStringLiteral("one"));
    document.applyMerging(moveTo(document.circuit(), "F1", 42), QStringLiteral("two"));
    document.apply(moveTo(document.circuit(), "F1", 43));
    document.apply(moveTo(document.circuit(), "F1", 44));
    CHECK(document.undoStack().count() == 4);
}

TEST_CASE("the document says what an edit touched, on the way back as well", "[document]") {
    Document document;
    document.startNew(twoParts());
    std::vector<ChangedObjects> heard;
    QObject::connect(&document, &Document::changed,
                     [&](const ChangedObjects& objects) { heard.push_back(objects); });
    document.apply(removalOfPart(document.circuit(), {"F1"}));
    document.undoStack().undo();
    DrivePlan plan;
    plan.duration_s = 600;
    document.apply({"Plan", {replacePlan(plan)}});
    REQUIRE(heard.size() == 3);
    for (std::size_t i = 0; i < 2; ++i) {
        CHECK(heard[i].parts == std::vector<PartId>{{"F1"}});
        CHECK(heard[i].wires == std::vector<WireId>{{"w1"}});
        CHECK_FALSE(heard[i].plan);
    }
    CHECK(heard[2].plan);
    CHECK(heard[2].parts.empty());
}

TEST_CASE("random edits and all the way back give the same bytes", "[document]") {
    Document document;
    document.startNew(twoParts());
    const std::string before = circuitText(document.circuit());
    constexpr unsigned kSeed = 20261;
    INFO("seed " << kSeed);
    std::mt19937 random(kSeed);
    for (int i = 0; i < 400; ++i) {
        makeRandomEdit(document, random);
    }
    while (document.undoStack().canUndo()) {
        document.undoStack().undo();
    }
    CHECK(circuitText(document.circuit()) == before);
}

TEST_CASE("a file that cannot be read leaves the open document as it was", "[document]") {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("broken.pumpwright"));
    QFile file(path);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("{\"pumpwright\": 1, \"parts\": ");
    file.close();

    Document document;
    document.startNew(twoParts());
    document.apply(moveTo(document.circuit(), "F1", 9));
    const std::string before = circuitText(document.circuit());
    QSignalSpy changes(&document, &Document::changed);
    const Result<void> opened = document.open(path);
    REQUIRE_FALSE(opened);
    CHECK_FALSE(opened.error().text.empty());
    CHECK(circuitText(document.circuit()) == before);
    CHECK(document.isModified());
    CHECK(changes.isEmpty());
    CHECK(document.path().isEmpty());
}

TEST_CASE("saving marks the document as saved and opening reads the same circuit", "[document]") {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("van \u00dc.pumpwright"));
    Document document;
    document.startNew(twoParts());
    document.apply(moveTo(document.circuit(), "F1", 9));
    REQUIRE(document.isModified());
    QSignalSpy fileChanges(&document, &Document::fileChanged);
    REQUIRE(document.save(path));
    CHECK_FALSE(document.isModified());
    CHECK(document.path() == path);
    CHECK(fileChanges.count() == 1);
    document.undoStack().undo();
    CHECK(document.isModified());

    Document second;
    REQUIRE(second.open(path));
    CHECK(second.circuit().parts.at({"F1"}).at.x == 9);
    CHECK_FALSE(second.isModified());
    CHECK_FALSE(second.undoStack().canUndo());
}

TEST_CASE("a save that fails keeps the document modified", "[document]") {
    QTemporaryDir folder;
    Document document;
    document.startNew(twoParts());
    document.apply(moveTo(document.circuit(), "F1", 9));
    CHECK_FALSE(document.save(folder.filePath(QStringLiteral("no such folder/a.pumpwright"))));
    CHECK(document.isModified());
    CHECK(document.path().isEmpty());
}
