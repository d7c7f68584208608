#include "app/desktop/circuit/canvas_edits.h"
#include "app/desktop/circuit/circuit_scene.h"
#include "app/desktop/circuit/line_surgery.h"
#include "app/desktop/circuit/offered_ends.h"
#include "app/desktop/circuit/tool.h"

#include <QCoreApplication>
#include <QLineF>

#include <type_traits>

namespace pumpwright {
namespace {

/// Draws lines from terminal to terminal (or port to port), by two clicks or by a drag. Clicks on the empty
/// sheet between fix corners. Keys type reference and number of an end; Enter takes it, or the one on offer.
template <class Line>
class ConnectTool final : public Tool {
    Q_DECLARE_TR_FUNCTIONS(pumpwright::ConnectTool)

public:
    ConnectTool(ToolHost& toolHost, Repeat repeat) : Tool(toolHost), m_repeat(repeat) {}

    CanvasActivity activity() const override { return kIsHose ? CanvasActivity::Hose : CanvasActivity::Wire; }

    void activate() override {
        host().setCursorShape(Qt::CrossCursor);
        const std::set<PartId>& selected = host().selection().objects().parts;
        m_atHand = selected.size() == 1 ? std::optional(*selected.begin()) : std::nullopt;
        offer(m_atHand ? freeEndOf(circuit(), *m_atHand, kSort) : std::nullopt);
    }

    void press(const CanvasPointer& pointer) override {
        forgetKeys();
        const auto caught = caughtAt(pointer);
        if (!m_start) {
            m_start = caught;
            m_startedByPress = caught.has_value();
        } else if (caught) {
            finish(*caught);
        } else if (const auto line = lineBelow(pointer)) {
            finishOn(*line);
        } else {
            m_bends.push_back(nearestGridPoint(pointer.at));
        }
        show(pointer);
        sayNext();
    }

    void move(const CanvasPointer& pointer) override {
        if (m_offer || !m_typed.isEmpty()) {
            forgetKeys();
            sayNext();
        }
        show(pointer);
    }

    void release(const CanvasPointer& pointer) override {
        // A press on one terminal and a release on another is a line drawn by a drag.
        const auto caught = caughtAt(pointer);
        if (m_start && m_startedByPress && caught && caught->end != m_start->end) {
            finish(*caught);
        } else if (const auto line = lineBelow(pointer); m_start && m_startedByPress && !caught && line) {
            finishOn(*line);
        }
        m_startedByPress = false;
        if (m_repeat == Repeat::Once) {
            host().switchTo(nullptr);
            return;
        }
        show(pointer);
        sayNext();
    }

    void leave() override { host().scene().setOverlay({}); }

    /// W and H change between wires and hoses as long as nothing is typed; no part has these letters.
    bool wantsText(int key, Qt::KeyboardModifiers modifiers) const override {
        const bool isLetter = key > Qt::Key_Space && key <= Qt::Key_AsciiTilde;
        const bool switches = m_typed.isEmpty() && (key == Qt::Key_W || key == Qt::Key_H);
        return isLetter && !switches && !(modifiers & (Qt::ControlModifier | Qt::AltModifier));
    }

    bool keyPress(int key, Qt::KeyboardModifiers modifiers) override {
        if (wantsText(key, modifiers)) {
            type(m_typed + QChar(key));
            return true;
        }
        if (key == Qt::Key_Backspace && !m_typed.isEmpty()) {
            type(m_typed.chopped(1));
            return true;
        }
        if ((key == Qt::Key_Return || key == Qt::Key_Enter) && (m_offer || !m_typed.isEmpty())) {
            takeOffer();
            return true;
        }
        if (key == Qt::Key_Backspace && !m_bends.empty()) {
            m_bends.pop_back();
            return true;
        }
        if (key == Qt::Key_Escape && m_start && m_repeat == Repeat::UntilEscape) {
            restart();
            host().scene().setOverlay({});
            sayNext();
            return true;
        }
        return false;
    }

private:
    static constexpr bool kIsHose = std::is_same_v<Line, Hose>;
    static constexpr EndSort kSort = kIsHose ? EndSort::Port : EndSort::Terminal;

    const Circuit& circuit() { return host().document().circuit(); }

    /// Shows what Enter would take.
    void offer(const std::optional<End>& end) {
        m_offer.reset();
        Overlay overlay;
        if (end) {
            m_offer = {*end, *host().scene().layout().parts.at(end->part).point(end->terminal)};
            overlay.caught = m_offer->point.at;
            overlay.caughtText = connectionText(circuit(), *m_offer);
            if (m_start) {
                overlay.line = proposedPath(host().scene().layout(), m_start->point, m_offer->point, m_bends);
            }
        }
        host().scene().setOverlay(overlay);
        sayNext();
    }

    void type(const QString& text) {
        m_typed = text;
        const std::vector<End> ends = typedEnds(circuit(), text, kSort, m_start ? std::nullopt : m_atHand);
        offer(ends.empty() ? std::nullopt : std::optional(ends.front()));
    }

    void takeOffer() {
        if (!m_offer || !stands(*m_offer) || (m_start && !stands(*m_start))) {
            return; // nothing is called like that, or an undo took it away
        }
        const CircuitScene::Caught taken = *m_offer;
        m_typed.clear();
        if (!m_start) {
            m_start = taken;
            offer(nearestFreeEnd(circuit(), host().scene().layout(), taken.end, kSort));
        } else {
            const PartId begun = m_start->end.part;
            finish(taken);
            m_atHand = taken.end.part;
            offer(m_start ? std::nullopt : goingOn(taken.end.part, begun));
        }
    }

    /// From where the last line ended, or, where nothing is free there, from the part that it came from: so
    /// both ends of a diode go to one coil.
    std::optional<End> goingOn(const PartId& ended, const PartId& begun) {
        const auto end = freeEndOf(circuit(), ended, kSort);
        return end ? end : freeEndOf(circuit(), begun, kSort);
    }

    bool stands(const CircuitScene::Caught& caught) {
        const auto& parts = host().scene().layout().parts;
        const auto part = parts.find(caught.end.part);
        return part != parts.end() && part->second.point(caught.end.terminal) != nullptr;
    }

    void forgetKeys() {
        m_offer.reset();
        m_typed.clear();
    }

    std::optional<CircuitScene::Caught> caughtAt(const CanvasPointer& pointer) {
        auto caught = host().scene().connectionAt(pointer.at, pointer.reach);
        return caught && caught->point.isPort == kIsHose ? caught : std::nullopt;
    }

    using Id = std::conditional_t<kIsHose, HoseId, WireId>;
    struct LineBelow {
        Id id;
        CutPlace place;
    };

    /// The line of the same sort that a click would branch from.
    std::optional<LineBelow> lineBelow(const CanvasPointer& pointer) {
        const SelectedObjects below = host().scene().objectAt(pointer.at, pointer.reach / 2);
        const CircuitLayout& layout = host().scene().layout();
        if constexpr (kIsHose) {
            return below.hoses.empty() ? std::nullopt : placeOn(layout.hoses, *below.hoses.begin(), pointer);
        } else {
            return below.wires.empty() ? std::nullopt : placeOn(layout.wires, *below.wires.begin(), pointer);
        }
    }

    static std::optional<LineBelow> placeOn(const std::map<Id, LinePicture>& lines, const Id& id,
                                            const CanvasPointer& pointer) {
        const auto place = cutPlace(lines.at(id), pointer.at);
        return place ? std::optional(LineBelow{id, *place}) : std::nullopt;
    }

    void restart() {
        forgetKeys();
        m_start.reset();
        m_startedByPress = false;
        m_bends.clear();
    }

    void finish(const CircuitScene::Caught& target) {
        if (target.end != m_start->end) {
            Line line = newLine();
            line.to = target.end;
            make(joining(host().document().circuit(), std::move(line)));
        }
    }

    void finishOn(const LineBelow& below) {
        make(branching(host().document().circuit(), below.id, below.place, newLine()));
    }

    /// From the start, with the corners that were clicked.
    Line newLine() {
        Line line;
        if constexpr (kIsHose) {
            line = host().newHose();
        } else {
            line = host().newWire();
        }
        line.from = m_start->end;
        line.bends = m_bends;
        return line;
    }

    void make(const Addition& addition) {
        restart();
        host().document().apply(addition.edit);
        host().selection().select(addition.objects);
    }

    void show(const CanvasPointer& pointer) {
        const auto caught = caughtAt(pointer);
        Overlay overlay;
        if (caught) {
            overlay.caught = caught->point.at;
            overlay.caughtText = connectionText(host().scene().circuit(), *caught);
        } else if (const auto line = lineBelow(pointer); m_start && line) {
            overlay.caught = line->place.at;
            overlay.caughtText = kIsHose ? tr("tee in the hose") : tr("splice in the wire");
        }
        if (m_start) {
            ConnectionPoint loose;
            loose.at = overlay.caught.value_or(nearestGridPoint(pointer.at));
            loose.freeExit = true;
            overlay.line = proposedPath(host().scene().layout(), m_start->point,
                                        caught ? caught->point : loose, m_bends);
        }
        host().scene().setOverlay(overlay);
    }

    void sayNext() {
        if (!m_typed.isEmpty() && !m_offer) {
            host().setHint(tr("Nothing here is called %1. Backspace takes a letter back.").arg(m_typed));
            return;
        }
        if (m_offer) {
            host().setHint(
                (m_start ? tr("Enter ends it at %1. Type reference and number for another, as in K1 86.")
                         : tr("Enter begins at %1. Type reference and number for another, as in K1 86."))
                    .arg(connectionText(circuit(), *m_offer)));
            return;
        }
        if (!m_start) {
            host().setHint(kIsHose ? tr("Click the port where the hose begins, or type it. Esc ends.")
                                   : tr("Click the terminal where the wire begins, or type it. Esc ends."));
            return;
        }
        const QString start = connectionText(host().scene().circuit(), *m_start);
        host().setHint(
            kIsHose ? tr("From %1: click the port or hose where the hose ends, or a place for a corner. "
                         "Esc starts again.")
                          .arg(start)
                    : tr("From %1: click the terminal or wire where the wire ends, or a place for a corner. "
                         "Esc starts again.")
                          .arg(start));
    }

    Repeat m_repeat;
    std::vector<GridPoint> m_bends;
    std::optional<CircuitScene::Caught> m_start;
    std::optional<CircuitScene::Caught> m_offer; ///< what Enter takes
    QString m_typed;
    std::optional<PartId> m_atHand; ///< where the last line ended, for numbers typed alone
    bool m_startedByPress = false;  ///< the button is still down since the start
};

} // namespace

std::unique_ptr<Tool> wireTool(ToolHost& host, Repeat repeat) {
    return std::make_unique<ConnectTool<Wire>>(host, repeat);
}

std::unique_ptr<Tool> hoseTool(ToolHost& host, Repeat repeat) {
    return std::make_unique<ConnectTool<Hose>>(host, repeat);
}

} // namespace pumpwright
