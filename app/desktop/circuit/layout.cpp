#include "app/desktop/circuit/layout.h"

#include "app/desktop/circuit/route_field.h"
#include "core/units/quantity_kind.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>
#include <limits>

namespace pumpwright {
namespace {

constexpr int kMargin = 16; ///< steps round the parts that lines may use

bool inReadingOrder(GridPoint a, GridPoint b) {
    return a.y != b.y ? a.y < b.y : a.x < b.x;
}

/// The steps whose grid points a rectangle covers.
QRect coveredSteps(const QRectF& scene) {
    return {QPoint(static_cast<int>(std::ceil(scene.left() / kStep - 0.01)),
                   static_cast<int>(std::ceil(scene.top() / kStep - 0.01))),
            QPoint(static_cast<int>(std::floor(scene.right() / kStep + 0.01)),
                   static_cast<int>(std::floor(scene.bottom() / kStep + 0.01)))};
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

/// A text on a line, and how badly it stands there.
struct LabelPlace {
    QString text;
    QPointF at;
    bool upright = true;
    double width = 0;
    int score = std::numeric_limits<int>::max();
};

/// Looks along the stretches of a line for the best place of a text.
class LabelSearch {
public:
    LabelSearch(const RouteField& field, const QPolygonF& path) : m_field(field), m_path(path) {}

    LabelPlace placeFor(const QString& text) {
        m_best = {};
        m_best.text = text;
        m_best.width = QFontMetricsF(textFont(TextRole::Number)).horizontalAdvance(text) + 4;
        for (int i = 0; i + 1 < m_path.size(); ++i) {
            tryStretch(m_path[i], m_path[i + 1]);
        }
        return m_best;
    }

private:
    void tryStretch(const QPointF& from, const QPointF& to) {
        const QPointF stretch = to - from;
        const double length = std::abs(stretch.x()) + std::abs(stretch.y());
        const int shortage = static_cast<int>(std::ceil(std::max(0.0, m_best.width - length) / 2));
        for (const double share : {0.5, 0.25, 0.75}) {
            tryPlace(from + share * stretch, std::abs(stretch.x()) > std::abs(stretch.y()),
                     shortage + (share == 0.5 ? 0 : 1));
        }
    }

    void tryPlace(const QPointF& on, bool across, int handicap) {
        constexpr double kOff = 11; ///< middle of the text from the middle of the line
        const QPointF at = across ? on - QPointF(0, kOff) : on - QPointF(kOff, 0);
        const QSizeF size = across ? QSizeF(m_best.width, kStep) : QSizeF(kStep, m_best.width);
        const QRectF rect(at - QPointF(size.width() / 2, size.height() / 2), size);
        const int score = handicap + m_field.crowding(coveredSteps(rect), across);
        if (score < m_best.score) {
            m_best.score = score;
            m_best.at = at;
            m_best.upright = across;
        }
    }

    const RouteField& m_field;
    const QPolygonF& m_path;
    LabelPlace m_best;
};

QRectF labelRect(const LabelPlace& place) {
    const QSizeF size = place.upright ? QSizeF(place.width, 14) : QSizeF(14, place.width);
    return {place.at - QPointF(size.width() / 2, size.height() / 2), size};
}

/// The fullest of the texts, given from full to short, that stands well; else the one that stands best.
LabelPlace bestLabel(LabelSearch& search, const QStringList& texts) {
    constexpr int kGoodScore = 8;
    LabelPlace best;
    for (const QString& text : texts) {
        const LabelPlace place = search.placeFor(text);
        if (place.score < best.score) {
            best = place;
        }
        if (best.score <= kGoodScore) {
            break;
        }
    }
    return best;
}

void placeLabel(LinePicture& picture, const QStringList& texts, RouteField& field) {
    LabelSearch search(field, picture.path);
    const LabelPlace place = bestLabel(search, texts);
    picture.label = place.text;
    picture.labelAt = place.at;
    picture.labelUpright = place.upright;
    const QRectF rect = labelRect(place);
    field.addText(coveredSteps(rect.adjusted(-4, -4, 4, 4)));
    picture.extent |= rect;
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
        job.picture->extent = job.picture->path.boundingRect().adjusted(-8, -8, 8, 8);
        findMiddle(*job.picture);
    }
    for (auto& [id, picture] : layout.wires) {
        const Wire& wire = circuit.wires.at(id);
        const QString reference = QString::fromStdString(wire.reference);
        placeLabel(picture,
                   {wireLabel(wire), reference + u' ' + QString::fromStdString(wire.colour), reference},
                   field);
    }
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

QPolygonF scenePath(const std::vector<GridPoint>& corners) {
    QPolygonF path;
    for (const GridPoint corner : corners) {
        path << scenePoint(corner);
    }
    return path;
}

QString wireLabel(const Wire& wire) {
    return QString::fromStdString(wire.reference + " " + wire.colour + " " +
                                  formatQuantity(wire.area_m2, QuantityKind::WireArea));
}

} // namespace pumpwright
