#include "app/desktop/circuit/arranging.h"

#include "app/desktop/circuit/canvas_edits.h"
#include "app/desktop/circuit/part_picture.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

/// Texts that undo shows; %1 is which parts.
struct ArrangingNames {
    Q_DECLARE_TR_FUNCTIONS(pumpwright::Arranging)
};

/// From where to where a symbol reaches along one direction, in grid steps.
struct Span {
    PartId id;
    int low = 0;
    int high = 0;
    int twiceMiddle() const { return low + high; }
};

bool isAcross(Arrangement how) {
    return how == Arrangement::LeftEdges || how == Arrangement::MiddlesAcross ||
           how == Arrangement::RightEdges || how == Arrangement::GapsAcross;
}

bool isGaps(Arrangement how) {
    return how == Arrangement::GapsAcross || how == Arrangement::GapsDown;
}

/// Halves go up, on both sides of the origin: a part that moves by whole steps keeps its rounding.
int steps(double sceneUnits) {
    return static_cast<int>(std::floor(sceneUnits / kStep + 0.5));
}

/// In the order in which they lie along the direction.
std::vector<Span> spansOf(const Circuit& circuit, const std::set<PartId>& parts, bool across) {
    std::vector<Span> spans;
    for (const PartId& id : parts) {
        const PartPicture picture = pictureOf(circuit.parts.at(id));
        const QRectF body = picture.body.translated(picture.origin());
        spans.push_back(across ? Span{id, steps(body.left()), steps(body.right())}
                               : Span{id, steps(body.top()), steps(body.bottom())});
    }
    std::stable_sort(spans.begin(), spans.end(),
                     [](const Span& a, const Span& b) { return a.twiceMiddle() < b.twiceMiddle(); });
    return spans;
}

/// How far each span moves.
std::vector<int> shiftsToEdge(const std::vector<Span>& spans, bool toLow) {
    int edge = toLow ? spans.front().low : spans.front().high;
    for (const Span& span : spans) {
        edge = toLow ? std::min(edge, span.low) : std::max(edge, span.high);
    }
    std::vector<int> shifts;
    for (const Span& span : spans) {
        shifts.push_back(edge - (toLow ? span.low : span.high));
    }
    return shifts;
}

int halfRoundedDown(int twice) {
    return (twice - (twice % 2 != 0 && twice < 0 ? 1 : 0)) / 2;
}

/// The line is half-way between the outermost middles. Half steps go one way, so that asking twice changes
/// nothing.
std::vector<int> shiftsToMiddle(const std::vector<Span>& spans) {
    const int twiceLine = halfRoundedDown(spans.front().twiceMiddle() + spans.back().twiceMiddle());
    std::vector<int> shifts;
    for (const Span& span : spans) {
        shifts.push_back(-halfRoundedDown(span.twiceMiddle() - twiceLine));
    }
    return shifts;
}

/// The room between the outermost parts, shared out to whole steps; at least one, so that none touch.
std::vector<int> shiftsToGaps(const std::vector<Span>& spans) {
    int room = spans.back().high - spans.front().low;
    for (const Span& span : spans) {
        room -= span.high - span.low;
    }
    const auto gaps = static_cast<double>(spans.size() - 1);
    const int gap = std::max(1, static_cast<int>(std::lround(room / gaps)));
    std::vector<int> shifts;
    int next = spans.front().low;
    for (const Span& span : spans) {
        shifts.push_back(next - span.low);
        next += span.high - span.low + gap;
    }
    return shifts;
}

std::vector<int> shiftsOf(const std::vector<Span>& spans, Arrangement how) {
    switch (how) {
    case Arrangement::LeftEdges:
    case Arrangement::TopEdges:
        return shiftsToEdge(spans, true);
    case Arrangement::RightEdges:
    case Arrangement::BottomEdges:
        return shiftsToEdge(spans, false);
    case Arrangement::MiddlesAcross:
    case Arrangement::MiddlesDown:
        return shiftsToMiddle(spans);
    case Arrangement::GapsAcross:
    case Arrangement::GapsDown:
        break;
    }
    return shiftsToGaps(spans);
}

QString namePattern(Arrangement how) {
    switch (how) {
    case Arrangement::LeftEdges:
        return ArrangingNames::tr("Align %1 left");
    case Arrangement::MiddlesAcross:
        return ArrangingNames::tr("Align %1 one below the other");
    case Arrangement::RightEdges:
        return ArrangingNames::tr("Align %1 right");
    case Arrangement::TopEdges:
        return ArrangingNames::tr("Align %1 at the top");
    case Arrangement::MiddlesDown:
        return ArrangingNames::tr("Align %1 side by side");
    case Arrangement::BottomEdges:
        return ArrangingNames::tr("Align %1 at the bottom");
    case Arrangement::GapsAcross:
        return ArrangingNames::tr("Equal gaps across: %1");
    case Arrangement::GapsDown:
        break;
    }
    return ArrangingNames::tr("Equal gaps down: %1");
}

} // namespace

bool canArrange(const SelectedObjects& objects, Arrangement how) {
    return objects.parts.size() >= (isGaps(how) ? 3U : 2U);
}

Edit arranging(const Circuit& circuit, const SelectedObjects& objects, Arrangement how) {
    Edit edit{editName(namePattern(how), circuit, {objects.parts, {}, {}}), {}};
    if (!canArrange(objects, how)) {
        return edit;
    }
    const std::vector<Span> spans = spansOf(circuit, objects.parts, isAcross(how));
    const std::vector<int> shifts = shiftsOf(spans, how);
    // Parts that go the same way are one movement, so that wires between them keep their corners.
    std::map<int, SelectedObjects> together;
    for (std::size_t i = 0; i < spans.size(); ++i) {
        together[shifts[i]].parts.insert(spans[i].id);
    }
    for (const auto& [shift, parts] : together) {
        const GridPoint by = isAcross(how) ? GridPoint{shift, 0} : GridPoint{0, shift};
        const Edit move = movement(circuit, parts, by);
        edit.changes.insert(edit.changes.end(), move.changes.begin(), move.changes.end());
    }
    return edit;
}

} // namespace pumpwright
