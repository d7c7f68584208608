#include "app/desktop/circuit/layout.h"

#include "app/desktop/circuit/label_search.h"
#include "app/desktop/circuit/route_field.h"
#include "app/desktop/shown_text.h"
#include "core/units/quantity_kind.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pumpwright {
namespace {

constexpr int kMargin = 16; ///< steps round the parts that lines may use

bool inReadingOrder(GridPoint a, GridPoint b) {
    return a.y != b.y ? a.y < b.y : a.x < b.x;
}

RouteEnd routeEnd(const ConnectionPoint& point) {
    return {point.at, point.freeExit ? std::nullopt : std::optional(point.exit)};
}

QRect fieldArea(const CircuitLayout& layout) {
    QRectF area(0, 0, kStep, kStep);
    bool first = true;
    for (const auto& [id, picture] : layout.parts) {
        const QRectF body = picture.extent.translated(picture.origin());
        area = first ? body : area | body;
        first = false;
    }
    return coveredSteps(area).adjusted(-kMargin, -kMargin, kMargin, kMargin);
}

RouteField fieldOf(const CircuitLayout& layout, const QRect& area) {
    RouteField field(area);
    for (const auto& [id, picture] : layout.parts) {
        // The outermost row holds leads only: lines may leave sideways there.
        field.addBody(coveredSteps(picture.body.translated(picture.origin()).adjusted(4, 4, -4, -4)));
        for (const PartText& text : picture.texts) {
            if (text.role != TextRole::Number) {
                field.addText(coveredSteps(text.rect.translated(picture.origin()).adjusted(-4, -8, 4, 8)));
            }
        }
        for (const ConnectionPoint& point : picture.points) {
            field.addTerminal(routeEnd(point));
        }
    }
    return field;
}

const ConnectionPoint* pointOf(const CircuitLayout& layout, const End& end) {
    const auto part = layout.parts.find(end.part);
    return part == layout.parts.end() ? nullptr : part->second.point(end.terminal);
}

/// A line that waits for its path.
struct Job {
    const ConnectionPoint* from;
    const ConnectionPoint* to;
    const std::vector<GridPoint>* bends;
    LinePicture* picture;
    std::string id;

    int reach() const { return std::abs(from->at.x - to->at.x) + std::abs(from->at.y - to->at.y); }
};

/// Lines with corners that somebody fixed come first, then the short ones: those have the least choice.
bool comesFirst(const Job& a, const Job& b) {
    if (a.bends->empty() != b.bends->empty()) {
        return b.bends->empty();
    }
    return a.reach() != b.reach() ? a.reach() < b.reach() : a.id < b.id;
}

template <class Lines, class Pictures>
void addJobs(const CircuitLayout& layout, const Lines& lines, Pictures& pictures, const char* prefix,
             std::vector<Job>& jobs) {
    for (const auto& [id, line] : lines) {
        const ConnectionPoint* from = pointOf(layout, line.from);
        const ConnectionPoint* to = pointOf(layout, line.to);
        if (from && to) {
            jobs.push_back({from, to, &line.bends, &pictures[id], prefix + id.text});
        }
    }
}

QRectF extentOf(const QPolygonF& path) {
    return path.boundingRect().adjusted(-8, -8, 8, 8);
}

/// Middle and direction of the longest straight stretch.
void findMiddle(LinePicture& picture) {
    double longest = -1;
    for (int i = 0; i + 1 < picture.path.size(); ++i) {
        const QPointF stretch = picture.path[i + 1] - picture.path[i];
        const double length = std::abs(stretch.x()) + std::abs(stretch.y());
        if (length > longest) {
            longest = length;
            picture.stretch = length;
            picture.middle = (picture.path[i] + picture.path[i + 1]) / 2;
            picture.direction = length > 0 ? stretch / length : QPointF(1, 0);
        }
    }
}

void put(LinePicture& picture, const LabelPlace& place) {
    picture.label = place.text;
    picture.labelAt = place.rect.center();
    picture.labelRect = place.rect;
    picture.labelUpright = place.upright;
    picture.extent |= place.rect;
}

/// A label on each wire: where somebody moved it, else the fullest text that stands well.
void placeLabels(CircuitLayout& layout, const Circuit& circuit, const RouteField& field, double textScale) {
    LabelSearch search(field, textScale);
    for (const auto& [id, picture] : layout.parts) {
        for (const PartText& text : picture.texts) {
            search.addText(text.rect.translated(picture.origin()));
        }
    }
    for (auto& [id, picture] : layout.wires) {
        if (const Wire& wire = circuit.wires.at(id); wire.labelFrom) {
            put(picture,
                search.fixed(labelAnchor(picture) + sceneDistance(*wire.labelFrom), wireLabel(wire)));
        }
    }
    for (auto& [id, picture] : layout.wires) {
        const Wire& wire = circuit.wires.at(id);
        if (wire.labelFrom) {
            continue;
        }
        const QString reference = shown(wire.reference);
        put(picture,
            search.placed(picture.path, {wireLabel(wire), reference + u' ' + shown(wire.colour), reference}));
    }
}

void countEnds(CircuitLayout& layout, const std::vector<Job>& jobs) {
    for (const Job& job : jobs) {
        ++layout.ends[job.from->at];
        ++layout.ends[job.to->at];
    }
}

void layLines(CircuitLayout& layout, const Circuit& circuit) {
    std::vector<Job> jobs;
    addJobs(layout, circuit.wires, layout.wires, "w", jobs);
    addJobs(layout, circuit.hoses, layout.hoses, "h", jobs);
    std::sort(jobs.begin(), jobs.end(), comesFirst);
    RouteField field = fieldOf(layout, fieldArea(layout));
    for (Job& job : jobs) {
        job.picture->corners = field.path(routeEnd(*job.from), routeEnd(*job.to), *job.bends);
        field.addPath(job.picture->corners);
        job.picture->path = scenePath(job.picture->corners);
        job.picture->extent = extentOf(job.picture->path);
        findMiddle(*job.picture);
    }
    placeLabels(layout, circuit, field, 1);
    countEnds(layout, jobs);
}

} // namespace

CircuitLayout::CircuitLayout() : ends(&inReadingOrder) {}

QRectF CircuitLayout::bounds() const {
    QRectF all;
    for (const auto& [id, picture] : parts) {
        all |= picture.extent.translated(picture.origin());
    }
    for (const auto& [id, picture] : wires) {
        all |= picture.extent;
    }
    for (const auto& [id, picture] : hoses) {
        all |= picture.extent;
    }
    return all;
}

std::vector<int> CircuitLayout::linesAt(const PartPicture& picture) const {
    std::vector<int> lines;
    for (const ConnectionPoint& point : picture.points) {
        const auto found = ends.find(point.at);
        lines.push_back(found == ends.end() ? 0 : found->second);
    }
    return lines;
}

CircuitLayout layoutOf(const Circuit& circuit) {
    return layoutOf(circuit, {});
}

CircuitLayout layoutOf(const Circuit& circuit, CircuitLayout before) {
    CircuitLayout layout;
    for (const auto& [id, part] : circuit.parts) {
        const auto known = before.parts.find(id);
        const bool same = known != before.parts.end() && known->second.part == part;
        layout.parts.emplace(id, same ? std::move(known->second) : pictureOf(part));
    }
    layLines(layout, circuit);
    return layout;
}

CircuitLayout withTextScale(CircuitLayout layout, const Circuit& circuit, double textScale) {
    for (auto& [id, picture] : layout.parts) {
        picture = pictureOf(picture.part, textScale);
    }
    RouteField field = fieldOf(layout, fieldArea(layout));
    for (const auto& [id, picture] : layout.hoses) {
        field.addPath(picture.corners);
    }
    for (auto& [id, picture] : layout.wires) {
        field.addPath(picture.corners);
        picture.extent = extentOf(picture.path);
    }
    placeLabels(layout, circuit, field, textScale);
    return layout;
}

std::vector<GridPoint> proposedPath(const CircuitLayout& layout, const ConnectionPoint& from,
                                    const ConnectionPoint& to, const std::vector<GridPoint>& bends) {
    QRect area = fieldArea(layout);
    for (const GridPoint at : {from.at, to.at}) {
        area |= QRect(at.x - kMargin, at.y - kMargin, 2 * kMargin, 2 * kMargin);
    }
    RouteField field = fieldOf(layout, area);
    for (const auto& [id, picture] : layout.wires) {
        field.addPath(picture.corners);
    }
    for (const auto& [id, picture] : layout.hoses) {
        field.addPath(picture.corners);
    }
    return field.path(routeEnd(from), routeEnd(to), bends);
}

QPointF labelAnchor(const LinePicture& picture) {
    return (picture.path.first() + picture.path.last()) / 2;
}

QPolygonF scenePath(const std::vector<GridPoint>& corners) {
    QPolygonF path;
    for (const GridPoint corner : corners) {
        path << scenePoint(corner);
    }
    return path;
}

QString wireLabel(const Wire& wire) {
    return shown(wire.reference + " " + wire.colour + " " +
                 formatQuantity(wire.area_m2, QuantityKind::WireArea));
}

} // namespace pumpwright
