#include "core/sheet/socket_view.h"

#include "core/parts/part_kind.h"
#include "core/sheet/references.h"
#include "core/sheet/tables_p.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

namespace pumpwright {
namespace {

struct Place {
    std::string_view number;
    double x;
    double y;
};

/// The cross of the common relay socket, seen from where the wires go in (value from memory of ISO 7588-1).
constexpr std::array kRelayCross{Place{"87", 0.5, 0}, Place{"87a", 0.5, 0.5}, Place{"86", 0, 0.5},
                                 Place{"85", 1, 0.5}, Place{"30", 0.5, 1}};

std::optional<Place> placeOnCross(const std::string& number) {
    const auto place = std::ranges::find(kRelayCross, number, &Place::number);
    return place == kRelayCross.end() ? std::nullopt : std::optional<Place>(*place);
}

bool fitsCross(const std::vector<TerminalSpec>& terminals) {
    return std::ranges::all_of(
        terminals, [](const TerminalSpec& terminal) { return placeOnCross(terminal.name).has_value(); });
}

/// As the symbol shows them, stretched to 0…1.
void placeAsDrawn(SocketView& view, const std::vector<TerminalSpec>& terminals) {
    const auto [left, right] =
        std::ranges::minmax(terminals, {}, [](const TerminalSpec& terminal) { return terminal.at.x; });
    const auto [top, bottom] =
        std::ranges::minmax(terminals, {}, [](const TerminalSpec& terminal) { return terminal.at.y; });
    const auto share = [](int at, int from, int to) {
        return to > from ? static_cast<double>(at - from) / (to - from) : 0.5;
    };
    for (std::size_t i = 0; i < terminals.size(); ++i) {
        view.pins[i].x = share(terminals[i].at.x, left.at.x, right.at.x);
        view.pins[i].y = share(terminals[i].at.y, top.at.y, bottom.at.y);
    }
}

void placeOnSocket(SocketView& view, const std::vector<TerminalSpec>& terminals) {
    if (!fitsCross(terminals)) {
        view.note = "Terminals as the schematic shows them. Go by the numbers on the part.";
        placeAsDrawn(view, terminals);
        return;
    }
    view.note =
        "Seen from where the wires go in. Go by the numbers on the socket: makes differ, most often in "
        "85 and 86.";
    for (SocketPin& pin : view.pins) {
        const Place place = *placeOnCross(pin.number);
        pin.x = place.x;
        pin.y = place.y;
    }
}

SocketView socketOf(const Circuit& circuit, const PartId& id, const Part& part) {
    const std::vector<TerminalSpec> terminals = kindOf(part).terminals(part);
    SocketView view{partName(circuit, id), "", {}};
    if (!part.label.empty()) {
        view.title += ", " + part.label;
    }
    for (const TerminalSpec& terminal : terminals) {
        view.pins.push_back({terminal.name, terminal.meaning, leadsText(circuit, {id, terminal.name}), 0, 0});
    }
    placeOnSocket(view, terminals);
    return view;
}

} // namespace

std::vector<SocketView> socketViews(const Circuit& circuit) {
    std::vector<std::pair<std::string, PartId>> ordered;
    for (const auto& [id, part] : circuit.parts) {
        const Features features = kindOf(part).features(part);
        if (!features.contacts.empty() && !features.loads.empty()) {
            ordered.emplace_back(part.reference, id);
        }
    }
    std::ranges::stable_sort(ordered,
                             [](const auto& a, const auto& b) { return referenceBefore(a.first, b.first); });
    std::vector<SocketView> views;
    for (const auto& [reference, id] : ordered) {
        views.push_back(socketOf(circuit, id, circuit.parts.at(id)));
    }
    return views;
}

} // namespace pumpwright
