#include "app/desktop/circuit/offered_ends.h"

#include "app/desktop/shown_text.h"
#include "core/parts/part_kind.h"

#include <algorithm>
#include <limits>
#include <set>

namespace pumpwright {
namespace {

template <class Lines>
std::set<End> endsOf(const Lines& lines) {
    std::set<End> ends;
    for (const auto& [id, line] : lines) {
        ends.insert({line.from, line.to});
    }
    return ends;
}

std::set<End> usedEnds(const Circuit& circuit, EndSort sort) {
    return sort == EndSort::Port ? endsOf(circuit.hoses) : endsOf(circuit.wires);
}

std::vector<End> endsOfPart(const PartId& id, const Part& part, EndSort sort) {
    const PartKind& kind = kindOf(part);
    std::vector<End> ends;
    for (const TerminalSpec& spec : sort == EndSort::Port ? kind.ports(part) : kind.terminals(part)) {
        ends.push_back({id, spec.name});
    }
    return ends;
}

/// Small letters without what people write between reference and number.
QString plain(QString text) {
    text.removeIf([](QChar one) { return one.isSpace() || one == u'.' || one == u':'; });
    return text.toLower();
}

/// How well a text means an end, 0 best; nothing where it does not.
std::optional<int> rank(const QString& text, const QString& reference, const End& end, bool used) {
    const QString whole = reference + plain(shown(end.terminal));
    if (text == whole) {
        return 0;
    }
    if (text == reference) {
        return used ? 2 : 1;
    }
    if (whole.startsWith(text)) {
        return used ? 4 : 3;
    }
    return text == plain(shown(end.terminal)) ? std::optional(used ? 6 : 5) : std::nullopt;
}

} // namespace

std::vector<End> typedEnds(const Circuit& circuit, const QString& text, EndSort sort,
                           const std::optional<PartId>& atHand) {
    const QString wanted = plain(text);
    if (wanted.isEmpty()) {
        return {};
    }
    const std::set<End> used = usedEnds(circuit, sort);
    using Standing = std::pair<int, bool>;
    std::vector<std::pair<Standing, End>> ranked;
    for (const auto& [id, part] : circuit.parts) {
        for (const End& end : endsOfPart(id, part, sort)) {
            if (const auto place = rank(wanted, plain(shown(part.reference)), end, used.contains(end))) {
                ranked.emplace_back(Standing{*place, id != atHand}, end);
            }
        }
    }
    std::stable_sort(ranked.begin(), ranked.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<End> ends;
    for (const auto& [place, end] : ranked) {
        ends.push_back(end);
    }
    return ends;
}

std::optional<End> freeEndOf(const Circuit& circuit, const PartId& part, EndSort sort) {
    const auto found = circuit.parts.find(part);
    if (found == circuit.parts.end()) {
        return std::nullopt;
    }
    const std::set<End> used = usedEnds(circuit, sort);
    const std::vector<End> ends = endsOfPart(part, found->second, sort);
    const auto free =
        std::find_if(ends.begin(), ends.end(), [&](const End& end) { return !used.contains(end); });
    return free == ends.end() ? std::nullopt : std::optional(*free);
}

std::optional<End> nearestFreeEnd(const Circuit& circuit, const CircuitLayout& layout, const End& from,
                                  EndSort sort) {
    const ConnectionPoint* start = layout.parts.at(from.part).point(from.terminal);
    const std::set<End> used = usedEnds(circuit, sort);
    int least = std::numeric_limits<int>::max();
    std::optional<End> nearest;
    for (const auto& [id, picture] : layout.parts) {
        for (const ConnectionPoint& point : picture.points) {
            const End end{id, point.name};
            const GridPoint way = point.at - start->at;
            const int distance = std::abs(way.x) + std::abs(way.y);
            const bool fits = id != from.part && point.isPort == (sort == EndSort::Port);
            if (fits && !used.contains(end) && distance < least) {
                least = distance;
                nearest = end;
            }
        }
    }
    return nearest;
}

} // namespace pumpwright
