#include "app/desktop/circuit/accessible_object.h"
#include "app/desktop/circuit/circuit_scene.h"
#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"
#include "app/desktop/document/selection.h"
#include "app/desktop/shown_text.h"
#include "core/simulate/drive.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <QAccessible>
#include <QDir>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>
#include <functional>

using namespace pumpwright;

namespace {

/// What was sent to screen readers, in order.
struct Told {
    QAccessible::Event event;
    QString name;
};
std::vector<Told> told;

void noteEvent(QAccessibleEvent& event) {
    QAccessibleInterface* access = event.accessibleInterface();
    told.push_back({event.type(), access ? access->text(QAccessible::Name) : QString()});
}

/// A canvas with a reader that listens.
class Reader {
public:
    explicit Reader(const Circuit& circuit = {}) {
        dynamic_cast<AccessibleCircuit&>(canvas()).setListener(noteEvent);
        view.resize(1000, 700);
        view.show();
        view.activateWindow();
        REQUIRE(QTest::qWaitForWindowActive(&view));
        view.setFocus();
        document.startNew(circuit);
        QCoreApplication::processEvents();
        told.clear();
    }

    void openSample(const QString& name) {
        REQUIRE(document.open(QStringLiteral("samples/") + name));
        REQUIRE(QTest::qWaitFor([this] { return !analysis.isRunning() && analysis.drive(); }, 120000));
    }

    QAccessibleInterface& canvas() { return *QAccessible::queryAccessibleInterface(&view); }

    std::vector<QAccessibleInterface*> children(QAccessible::Role role) {
        std::vector<QAccessibleInterface*> found;
        for (int i = 0; i < canvas().childCount(); ++i) {
            QAccessibleInterface* child = canvas().child(i);
            if (child && child->role() == role) {
                found.push_back(child);
            }
        }
        return found;
    }
    QAccessibleInterface* child(const QString& nameBegins) {
        for (int i = 0; i < canvas().childCount(); ++i) {
            QAccessibleInterface* one = canvas().child(i);
            if (one && one->text(QAccessible::Name).startsWith(nameBegins)) {
                return one;
            }
        }
        return nullptr;
    }
    QString stateOf(const QString& nameBegins) {
        QAccessibleInterface* one = child(nameBegins);
        REQUIRE(one);
        return one->text(QAccessible::Description);
    }

    Document document;
    Selection selection;
    Analysis analysis{document};
    CircuitView view{document, selection, analysis};
};

bool wasTold(QAccessible::Event event, const QString& nameBegins) {
    return std::any_of(told.begin(), told.end(), [&](const Told& one) {
        return one.event == event && one.name.startsWith(nameBegins);
    });
}

void act(QAccessibleInterface* on, const QString& action) {
    REQUIRE(on);
    REQUIRE(on->actionInterface());
    CHECK(on->actionInterface()->actionNames().contains(action));
    on->actionInterface()->doAction(action);
}

Circuit relayAndLamp() {
    return CircuitBuilder()
        .part("relay", "K1")
        .part("lamp", "P1")
        .part("fuse", "F1")
        .wire("F1.2", "K1.30")
        .wire("K1.87", "P1.1")
        .build();
}

} // namespace

TEST_CASE("a screen reader finds every part, wire, hose and finding of every sample", "[accessible]") {
    const QStringList samples = QDir(QStringLiteral("samples")).entryList({QStringLiteral("*.pumpwright")});
    REQUIRE(samples.size() >= 5);
    for (const QString& sample : samples) {
        CAPTURE(sample.toStdString());
        Reader reader;
        reader.openSample(sample);
        const Circuit& circuit = reader.document.circuit();
        const auto drawn = reader.children(QAccessible::Graphic);
        const auto findings = reader.children(QAccessible::Note);
        CHECK(drawn.size() == circuit.parts.size() + circuit.wires.size() + circuit.hoses.size());
        REQUIRE(findings.size() == reader.analysis.findings().size());
        for (std::size_t i = 0; i < findings.size(); ++i) {
            CHECK(findings[i]
                      ->text(QAccessible::Name)
                      .endsWith(translated(reader.analysis.findings()[i].what)));
            CHECK_FALSE(findings[i]->text(QAccessible::Description).isEmpty());
        }
        const auto hasName = [&](const QString& begins) {
            return std::any_of(drawn.begin(), drawn.end(), [&](QAccessibleInterface* one) {
                return one->text(QAccessible::Name).startsWith(begins + u' ');
            });
        };
        for (const auto& [id, part] : circuit.parts) {
            CHECK(hasName(shown(part.reference)));
        }
        for (const auto& [id, wire] : circuit.wires) {
            CHECK(hasName(QStringLiteral("Wire ") + shown(wire.reference)));
        }
        for (const auto& [id, hose] : circuit.hoses) {
            CHECK(hasName(QStringLiteral("Hose ") + shown(hose.reference) + u','));
        }
    }
}

TEST_CASE("every child on the canvas is whole: valid, in its place, and where it is drawn", "[accessible]") {
    Reader reader;
    reader.openSample(QStringLiteral("put-right.pumpwright"));
    const QRect seen(reader.view.viewport()->mapToGlobal(QPoint()), reader.view.viewport()->size());
    for (int i = 0; i < reader.canvas().childCount(); ++i) {
        QAccessibleInterface* child = reader.canvas().child(i);
        REQUIRE(child);
        CHECK(child->isValid());
        CHECK(reader.canvas().indexOfChild(child) == i);
        CHECK(child->parent() == &reader.canvas());
    }
    for (QAccessibleInterface* child : reader.children(QAccessible::Graphic)) {
        CHECK(seen.intersects(child->rect()));
        CHECK_FALSE(child->state().offscreen);
    }
    for (const auto& [id, part] : reader.document.circuit().parts) {
        const QPoint at = reader.view.mapFromScene(scenePoint(part.at));
        const QPoint onScreen = reader.view.viewport()->mapToGlobal(at);
        QAccessibleInterface* under = reader.canvas().childAt(onScreen.x(), onScreen.y());
        REQUIRE(under);
        CHECK(under->text(QAccessible::Name).startsWith(shown(part.reference)));
        CHECK(under->rect().contains(onScreen));
    }
}

TEST_CASE("selecting, opening the Nameplate and deleting are actions", "[accessible]") {
    Reader reader(relayAndLamp());
    QSignalSpy nameplate(&reader.view, &CircuitView::nameplateRequested);
    act(reader.child(QStringLiteral("P1")), selectAction());
    CHECK(reader.selection.objects() == SelectedObjects{{{"P1"}}, {}, {}});
    CHECK(reader.child(QStringLiteral("P1"))->state().selected);
    CHECK(nameplate.isEmpty());

    act(reader.child(QStringLiteral("Wire W1")), openNameplateAction());
    CHECK(reader.selection.objects() == SelectedObjects{{}, {{"w1"}}, {}});
    CHECK(nameplate.size() == 1);

    act(reader.child(QStringLiteral("Wire W2")), deleteAction());
    CHECK(reader.document.circuit().wires.size() == 1);
    CHECK_FALSE(reader.child(QStringLiteral("Wire W2")));
    for (QAccessibleInterface* child : reader.children(QAccessible::Graphic)) {
        for (const QString& name : child->actionInterface()->actionNames()) {
            CHECK_FALSE(child->actionInterface()->localizedActionName(name).isEmpty());
            CHECK_FALSE(child->actionInterface()->localizedActionDescription(name).isEmpty());
        }
    }
}

TEST_CASE("the action of a finding selects what it is about, and a finding can't be deleted",
          "[accessible]") {
    Reader reader;
    reader.openSample(QStringLiteral("first-try.pumpwright"));
    const auto findings = reader.children(QAccessible::Note);
    REQUIRE_FALSE(findings.empty());
    act(findings.front(), selectAction());
    const Finding& finding = reader.analysis.findings().front();
    CHECK(reader.selection.objects().parts == std::set(finding.parts.begin(), finding.parts.end()));
    CHECK(reader.selection.objects().wires == std::set(finding.wires.begin(), finding.wires.end()));
    CHECK(findings.front()->state().selected);
    CHECK_FALSE(findings.front()->actionInterface()->actionNames().contains(deleteAction()));
}

TEST_CASE("what is deleted is gone for a reader, and undo brings it back", "[accessible]") {
    Reader reader(relayAndLamp());
    QAccessibleInterface* lamp = reader.child(QStringLiteral("P1"));
    REQUIRE(lamp);
    const QAccessible::Id old = QAccessible::uniqueId(lamp);
    const std::size_t before = reader.children(QAccessible::Graphic).size();
    act(lamp, deleteAction());
    CHECK_FALSE(lamp->isValid()); // not yet freed: the reader is still inside its action
    CHECK(wasTold(QAccessible::ObjectDestroyed, {}));
    QCoreApplication::processEvents();
    CHECK(QAccessible::accessibleInterface(old) == nullptr);
    CHECK(reader.children(QAccessible::Graphic).size() == before - 2); // the lamp's wire went with it
    CHECK_FALSE(reader.child(QStringLiteral("P1")));
    told.clear();
    reader.document.undoStack().undo();
    CHECK(reader.children(QAccessible::Graphic).size() == before);
    REQUIRE(reader.child(QStringLiteral("P1")));
    CHECK(reader.child(QStringLiteral("P1"))->isValid());
    CHECK(wasTold(QAccessible::ObjectCreated, QStringLiteral("P1")));
}

TEST_CASE("an interface lives through a deletion that is undone at once", "[accessible]") {
    Reader reader(relayAndLamp());
    QAccessibleInterface* lamp = reader.child(QStringLiteral("P1"));
    act(lamp, deleteAction());
    reader.document.undoStack().undo();
    QCoreApplication::processEvents();
    CHECK(lamp->isValid());
    CHECK(reader.child(QStringLiteral("P1")) == lamp);
}

TEST_CASE("another circuit leaves nothing of the one before in the tree", "[accessible]") {
    Reader reader(relayAndLamp());
    REQUIRE(reader.child(QStringLiteral("F1")));
    reader.document.startNew(CircuitBuilder().part("buzzer", "P7").build());
    QCoreApplication::processEvents();
    CHECK_FALSE(reader.child(QStringLiteral("F1")));
    CHECK(reader.child(QStringLiteral("P7")));
    CHECK(reader.children(QAccessible::Graphic).size() == 1);
}

TEST_CASE("selecting by keys tells a reader what has the focus now", "[accessible]") {
    Reader reader(relayAndLamp());
    reader.selection.select({{{"K1"}}, {}, {}});
    told.clear();
    QTest::keyClick(&reader.view, Qt::Key_Right, Qt::ControlModifier);
    REQUIRE(reader.selection.objects().parts.size() == 1);
    const QString reference = shown(reader.selection.objects().parts.begin()->text);
    REQUIRE(reference != QStringLiteral("K1"));
    CHECK(wasTold(QAccessible::Focus, reference));
    CHECK(wasTold(QAccessible::Selection, reference));
    REQUIRE(reader.canvas().focusChild());
    CHECK(reader.canvas().focusChild()->text(QAccessible::Name).startsWith(reference));
    CHECK(reader.canvas().focusChild()->state().focused);
    CHECK_FALSE(reader.child(QStringLiteral("K1"))->state().selected);
    told.clear();
    reader.view.selectAll();
    CHECK(wasTold(QAccessible::SelectionWithin, reader.canvas().text(QAccessible::Name)));
    CHECK_FALSE(reader.child(QStringLiteral("K1"))->state().focused);
}

TEST_CASE("the words for parts and wires follow the cursor through the drive", "[accessible]") {
    Reader reader;
    reader.openSample(QStringLiteral("put-right.pumpwright"));
    const Circuit& circuit = reader.document.circuit();
    const Recording& recording = reader.analysis.drive()->recording;
    const auto relay = std::find_if(circuit.parts.begin(), circuit.parts.end(), [&](const auto& entry) {
        return entry.second.kind == "relay" && recording.part(entry.first, probe::kEnergised);
    });
    REQUIRE(relay != circuit.parts.end());
    const QString name = shown(relay->second.reference) + u' ';
    const Channel& coil = *recording.part(relay->first, probe::kEnergised);
    const auto timeWith = [&](bool energised) {
        for (double time_s = 0; time_s < recording.duration_s; time_s += 0.25) {
            if ((coil.at(time_s) >= 0.5) == energised && (coil.at(time_s + 0.2) >= 0.5) == energised) {
                return time_s + 0.2;
            }
        }
        return -1.0;
    };
    REQUIRE(timeWith(true) >= 0);
    REQUIRE(timeWith(false) >= 0);
    reader.selection.select({{relay->first}, {}, {}});
    reader.analysis.setCursor(timeWith(false));
    CHECK(reader.stateOf(name).startsWith(QStringLiteral("coil not energised, contact 87 open")));
    told.clear();
    reader.analysis.setCursor(timeWith(true));
    CHECK(reader.stateOf(name).startsWith(QStringLiteral("coil energised, contact 87 closed")));
    CHECK(wasTold(QAccessible::DescriptionChanged, name));
    const auto& live = static_cast<CircuitScene*>(reader.view.scene())->live();
    for (const auto& [id, wire] : circuit.wires) {
        const QString state = reader.stateOf(QStringLiteral("Wire ") + shown(wire.reference) + u' ');
        CHECK(state.startsWith(QStringLiteral("without voltage")) == !live.wires.at(id).live);
    }
}
