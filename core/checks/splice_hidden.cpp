#include "core/checks/survey.h"
#include "core/checks/wording.h"
#include "core/parts/part_kind.h"
#include "core/parts/placement.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>

namespace pumpwright {
namespace {

/// What covers paper: a part's symbol, or the point of a splice.
struct Cover {
    PartId part;
    Footprint footprint;
    bool splice = false;
};

/// A joint of wires with nothing else to it: one terminal, crimped.
bool isSplice(const Survey& survey, const PartId& id) {
    const Part& part = survey.part(id);
    return survey.features(id).fitting == Fitting::Splice && kindOf(part).terminals(part).size() == 1;
}

std::vector<Cover> coversOf(const Survey& survey) {
    std::vector<Cover> covers;
    for (const auto& [id, part] : survey.circuit().parts) {
        const bool splice = isSplice(survey, id);
        covers.push_back({id, splice ? Footprint{part.at, part.at} : footprintOf(part), splice});
    }
    return covers;
}

/// What, other than this splice itself, covers a point.
const Cover* coveredBy(const std::vector<Cover>& covers, const PartId& splice, GridPoint point) {
    const auto found = std::find_if(covers.begin(), covers.end(), [&](const Cover& cover) {
        return cover.footprint.covers(point) && cover.part != splice;
    });
    return found == covers.end() ? nullptr : &*found;
}

/// The grid point nearest to the splice that nothing covers, searched in growing squares.
GridPoint nearestClear(const std::vector<Cover>& covers, const PartId& splice, GridPoint at) {
    for (int distance = 1;; ++distance) {
        for (int x = -distance; x <= distance; ++x) {
            for (int y = -distance; y <= distance; ++y) {
                const GridPoint point{at.x + x, at.y + y};
                if (std::max(std::abs(x), std::abs(y)) == distance &&
                    coveredBy(covers, splice, point) == nullptr) {
                    return point;
                }
            }
        }
    }
}

Edit moveEdit(const Survey& survey, const PartId& splice, GridPoint to) {
    Part moved = survey.part(splice);
    moved.at = to;
    Edit edit{say("Move {}", nameOf(survey.circuit(), splice)).english(),
              {putPart(splice, std::move(moved))}};
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
    const std::vector<Cover> covers = coversOf(survey);
    std::vector<Finding> findings;
    for (const Cover& splice : covers) {
        const PartId& id = splice.part;
        const Part& part = survey.part(id);
        const Cover* cover = splice.splice ? coveredBy(covers, id, part.at) : nullptr;
        if (cover == nullptr) {
            continue;
        }
        const GridPoint clear = nearestClear(covers, id, part.at);
        const std::string name = nameOf(survey.circuit(), id);
        Finding finding = newFinding(rule);
        finding.parts = {id, cover->part};
        finding.value = std::max(std::abs(clear.x - part.at.x), std::abs(clear.y - part.at.y));
        finding.limit = 0;
        finding.what =
            say("{} lies under the symbol of {}, {} from clear paper.", name,
                nameOf(survey.circuit(), cover->part),
                finding.value > 1 ? say("{} grid steps", whole(finding.value)) : say("1 grid step"));
        finding.why =
            say("Whoever builds from the sheet does not see that wires meet there, or takes the part's "
                "terminal for the joint.");
        finding.remedies = {{say("Move {} to the nearest clear place.", name), moveEdit(survey, id, clear)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kSpliceHidden{"splice-hidden",
                                words("Splice hidden under a part"),
                                SignalWord::Notice,
                                words("common practice, no published source"),
                                false,
                                check};

} // namespace pumpwright
