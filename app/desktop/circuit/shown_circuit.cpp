#include "app/desktop/circuit/shown_circuit.h"

#include <QPainter>

#include <algorithm>
#include <tuple>

namespace pumpwright {
namespace {

template <class Id>
std::optional<SignalWord> markOf(const std::map<Id, SignalWord>& marks, const Id& id) {
    const auto found = marks.find(id);
    return found == marks.end() ? std::nullopt : std::optional(found->second);
}

template <class Id, class Live>
Live liveOf(const std::map<Id, Live>& all, const Id& id) {
    const auto found = all.find(id);
    return found == all.end() ? Live{} : found->second;
}

template <class Id>
Emphasis emphasisOf(const std::set<Id>& selected, const std::set<Id>& hovered, const Id& id) {
    if (selected.contains(id)) {
        return Emphasis::Selected;
    }
    return hovered.contains(id) ? Emphasis::Hovered : Emphasis::None;
}

/// Parts with the same key look the same but for state, texts and place.
std::string symbolKey(const PartPicture& picture, const std::vector<int>& ends) {
    const Part& part = picture.part;
    std::string key = part.kind + "/" + std::to_string(part.quarterTurns) + (part.mirrored ? "m" : "");
    for (const auto& [choice, option] : part.choices) {
        key.append("/").append(choice).append("=").append(option);
    }
    for (std::size_t i = 0; i < ends.size(); ++i) {
        const GridPoint at = picture.points[i].at - part.at;
        key += "/" + std::to_string(at.x) + "," + std::to_string(at.y) + "," +
               std::to_string(std::min(ends[i], 2));
    }
    return key;
}

std::string stateKey(const PartLive& live) {
    return std::string(live.closed ? "/closed" : "/open") + (live.energised ? "/on/" : "/off/") +
           std::to_string(live.travel);
}

void appendStretches(QVector<QLineF>& stretches, const QPolygonF& path) {
    for (qsizetype i = 0; i + 1 < path.size(); ++i) {
        stretches.emplace_back(path[i], path[i + 1]);
    }
}

} // namespace

void ShownCircuit::setObjects(const CircuitLayout& layout, const Circuit& circuit) {
    m_parts.clear();
    m_wires.clear();
    m_hoses.clear();
    for (const auto& [id, picture] : layout.parts) {
        const std::vector<int> ends = layout.linesAt(picture);
        // Room for the frame of a selection, the mark of a finding and a reading below.
        const QRectF area = picture.extent.translated(picture.origin()).adjusted(-26, -20, 26, 24);
        m_parts.push_back({id, &picture, ends, symbolKey(picture, ends), area});
    }
    const auto addLines = [](auto& shown, const auto& pictures, const auto& lines) {
        for (const auto& [id, picture] : pictures) {
            // Room for the current beside the arrow.
            shown.push_back({id, &picture, lines.at(id), picture.extent.adjusted(-62, -22, 62, 22)});
        }
    };
    addLines(m_wires, layout.wires, circuit.wires);
    addLines(m_hoses, layout.hoses, circuit.hoses);
}

std::vector<QRectF> ShownCircuit::sync(const Looks& looks) {
    std::vector<QRectF> changed;
    const auto put = [&](auto& shown, auto look) {
        const bool differs = !(shown.look == look);
        if (differs) {
            shown.look = std::move(look);
            changed.push_back(shown.area);
        }
        return differs;
    };
    const auto& [live, marks, selected, hovered] = looks;
    for (ShownPart& part : m_parts) {
        const bool isNew = part.lookKey.empty();
        if (put(part,
                PartLook{liveOf(live.parts, part.id), emphasisOf(selected.parts, hovered.parts, part.id),
                         markOf(marks.parts, part.id)}) ||
            isNew) {
            part.lookKey = part.key + stateKey(part.look.live);
        }
    }
    for (auto& wire : m_wires) {
        put(wire, LineLook{liveOf(live.wires, wire.id), emphasisOf(selected.wires, hovered.wires, wire.id),
                           markOf(marks.wires, wire.id)});
    }
    for (auto& hose : m_hoses) {
        put(hose,
            LineLook{{}, emphasisOf(selected.hoses, hovered.hoses, hose.id), markOf(marks.hoses, hose.id)});
    }
    return changed;
}

void ShownCircuit::paint(QPainter& painter, CircuitDrawing& drawing, const QRectF& seen) {
    for (const auto& hose : m_hoses) {
        if (hose.area.intersects(seen)) {
            drawing.drawHose(painter, *hose.picture, hose.look.emphasis);
        }
    }
    if (CircuitDrawing::isFar(painter)) {
        paintWiresFromAfar(painter, drawing, seen);
    } else {
        paintWires(painter, drawing, seen);
    }
    for (const ShownPart& part : m_parts) {
        if (part.area.intersects(seen)) {
            paintPart(painter, drawing, part);
        }
    }
    const auto paintAbove = [&](const auto& lines) {
        for (const auto& line : lines) {
            if (line.area.intersects(seen)) {
                paintAboveLine(painter, drawing, *line.picture, line.look);
            }
        }
    };
    paintAbove(m_wires);
    paintAbove(m_hoses);
}

void ShownCircuit::paintWires(QPainter& painter, const CircuitDrawing& drawing, const QRectF& seen) const {
    for (const auto& wire : m_wires) {
        if (wire.area.intersects(seen)) {
            drawing.drawWire(painter, *wire.picture, wire.line, wire.look.live, wire.look.emphasis);
        }
    }
}

/// From afar nobody sees which wire lies above, so that all stretches of one pen are drawn at once.
void ShownCircuit::paintWiresFromAfar(QPainter& painter, const CircuitDrawing& drawing,
                                      const QRectF& seen) const {
    std::map<std::tuple<int, QRgb, double>, QVector<QLineF>> stretches;
    for (const auto& wire : m_wires) {
        if (wire.area.intersects(seen)) {
            for (const WireStroke& stroke :
                 drawing.wireStrokes(wire.line, wire.look.live, wire.look.emphasis)) {
                appendStretches(
                    stretches[{static_cast<int>(stroke.layer), stroke.colour.rgba(), stroke.width}],
                    wire.picture->path);
            }
        }
    }
    for (const auto& [pen, lines] : stretches) {
        const auto& [layer, colour, width] = pen;
        const bool isStripe = layer == static_cast<int>(WireStroke::Layer::Stripe);
        painter.setPen(QPen(QColor::fromRgba(colour), width, isStripe ? Qt::DashLine : Qt::SolidLine,
                            isStripe ? Qt::FlatCap : Qt::SquareCap));
        painter.drawLines(lines);
    }
}

void ShownCircuit::paintPart(QPainter& painter, CircuitDrawing& drawing, const ShownPart& part) {
    const PartPicture& picture = *part.picture;
    const PartLook& look = part.look;
    const QPointF origin = picture.origin();
    if (look.emphasis != Emphasis::None) {
        painter.translate(origin);
        drawing.drawWash(painter, picture, look.emphasis);
        painter.translate(-origin);
    }
    m_pixmaps.draw(painter, part.lookKey, origin, picture.body.adjusted(-6, -6, 6, 6), [&](QPainter& inside) {
        drawing.drawSymbol(inside, picture, look.live);
        drawing.drawEnds(inside, picture, part.ends);
    });
    if (!CircuitDrawing::isFar(painter)) {
        painter.translate(origin);
        drawing.drawTexts(painter, picture, look.live);
        painter.translate(-origin);
    }
    if (look.mark) {
        paintMark(painter, drawing, origin + picture.markAt, *look.mark);
    }
}

void ShownCircuit::paintAboveLine(QPainter& painter, const CircuitDrawing& drawing,
                                  const LinePicture& picture, const LineLook& look) {
    drawing.drawLabel(painter, picture);
    if (look.live.current_A != 0.0 && picture.path.size() > 1) {
        const QPointF along = look.live.current_A > 0 ? picture.direction : -picture.direction;
        const std::string key = "arrow/" + std::to_string(along.x()) + "/" + std::to_string(along.y());
        m_pixmaps.draw(painter, key, picture.middle, QRectF(-12, -12, 24, 24),
                       [&](QPainter& inside) { drawing.drawArrow(inside, along); });
        drawing.drawCurrent(painter, picture, look.live, look.emphasis);
    }
    if (look.mark) {
        // Beside the arrow in the middle, as far as the stretch allows.
        const double room = std::clamp(picture.stretch / 2 - 12, 0.0, 40.0);
        paintMark(painter, drawing, picture.middle + room * picture.direction, *look.mark);
    }
}

void ShownCircuit::paintMark(QPainter& painter, const CircuitDrawing& drawing, const QPointF& at,
                             SignalWord word) {
    m_pixmaps.draw(painter, "mark/" + std::string(signalWordName(word)), at, QRectF(-14, -14, 28, 26),
                   [&](QPainter& inside) { drawing.drawMark(inside, {}, word); });
}

} // namespace pumpwright
