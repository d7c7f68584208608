#include "core/checks/survey.h"
#include "core/checks/wording.h"
#include "core/parts/part_kind.h"
#include "core/parts/placement.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <map>

namespace pumpwright {
namespace {

using Footprints = std::map<PartId, Footprint>;

Footprints footprints(const Circuit& circuit) {
    Footprints all;
    for (const auto& [id, part] : circuit.parts) {
        all.emplace_hint(all.end(), id, footprintOf(part));
    }
    return all;
}

/// A joint of wires with nothing else to it: one terminal, crimped.
bool isSplice(const Survey& survey, const PartId& id) {
    const Part& part = survey.part(id);
    return survey.features(id).fitting == Fitting::Splice && kindOf(part).terminals(part).size() == 1;
}

/// The part, another than this, whose symbol covers a point; another splice only where it is at the very
/// point.
std::optional<PartId> coveredBy(const Survey& survey, const Footprints& all, const PartId& own,
                                GridPoint point) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& entry) {
        const auto& [id, footprint] = entry;
        return id != own && (isSplice(survey, id) ? survey.part(id).at == point : footprint.covers(point));
    });
    return found == all.end() ? std::nullopt : std::optional(found->first);
}

/// The grid point nearest to the splice that nothing covers, searched in growing squares.
GridPoint nearestClear(const Survey& survey, const Footprints& all, const PartId& splice) {
    const GridPoint at = survey.part(splice).at;
    for (int distance = 1;; ++distance) {
        for (int x = -distance; x <= distance; ++x) {
            for (int y = -distance; y <= distance; ++y) {
                const GridPoint point{at.x + x, at.y + y};
                if (std::max(std::abs(x), std::abs(y)) == distance &&
                    !coveredBy(survey, all, splice, point)) {
                    return point;
                }
            }
        }
    }
}

Edit moveEdit(const Survey& survey, const PartId& splice, GridPoint to) {
    Part moved = survey.part(splice);
    moved.at = to;
    Edit edit{"Move " + nameOf(survey.circuit(), splice), {putPart(splice, std::move(moved))}};
    for (const auto& [id, wire] : survey.circuit().wires) {
        if ((wire.from.part == splice || wire.to.part == splice) && !wire.bends.empty()) {
            Wire straightened = wire;
            straightened.bends.clear();
            edit.changes.push_back(putWire(id, std::move(straightened)));
        }
    }
    return edit;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    const Footprints all = footprints(survey.circuit());
    std::vector<Finding> findings;
    for (const auto& [id, part] : survey.circuit().parts) {
        const auto cover = isSplice(survey, id) ? coveredBy(survey, all, id, part.at) : std::nullopt;
        if (!cover) {
            continue;
        }
        const GridPoint clear = nearestClear(survey, all, id);
        const std::string name = nameOf(survey.circuit(), id);
        Finding finding = newFinding(rule);
        finding.parts = {id, *cover};
        finding.value = std::max(std::abs(clear.x - part.at.x), std::abs(clear.y - part.at.y));
        finding.limit = 0;
        finding.what =
            fmt::format("{} lies under the symbol of {}, {:.0f} grid step{} from clear paper.", name,
                        nameOf(survey.circuit(), *cover), finding.value, finding.value > 1 ? "s" : "");
        finding.why = "Whoever builds from the sheet does not see that wires meet there, or takes the part's "
                      "terminal for the joint.";
        finding.remedies = {{"Move " + name + " to the nearest clear place.", moveEdit(survey, id, clear)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kSpliceHidden{"splice-hidden",
                                "Splice hidden under a part",
                                SignalWord::Notice,
                                "common practice, no published source",
                                false,
                                check};

} // namespace pumpwright
