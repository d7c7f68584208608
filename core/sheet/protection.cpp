#include "core/sheet/protection.h"

#include "core/parts/part_kind.h"

#include <deque>
#include <optional>
#include <vector>

namespace pumpwright {
namespace {

using NetIndex = std::size_t;

/// A way out of a net, through a part.
struct Way {
    NetIndex to;
    bool easy; ///< not through a load
    std::optional<PartId> fuse;
};

struct Walk {
    std::vector<std::vector<Way>> ways; ///< by net
    std::vector<NetIndex> starts;       ///< nets of the supplies' plus terminals
    std::vector<Protection> found;      ///< by net

    explicit Walk(std::size_t netCount) : ways(netCount), found(netCount) {}
};

std::optional<NetIndex> netAt(const Nets& nets, const PartId& part, const std::string& terminal) {
    const auto place = nets.netOf.find({part, terminal});
    return place == nets.netOf.end() ? std::nullopt : std::optional<NetIndex>(place->second);
}

void addPath(Walk& walk, const Nets& nets, const PartId& id, const CurrentPath& path,
             const Features& features) {
    const auto from = netAt(nets, id, path.from);
    const auto to = netAt(nets, id, path.to);
    if (!from || !to) {
        return;
    }
    const bool easy = path.joins || features.rectifier.has_value();
    const auto fuse = features.fuse ? std::optional<PartId>(id) : std::nullopt;
    walk.ways[*from].push_back({*to, easy, fuse});
    if (!path.oneWay) {
        walk.ways[*to].push_back({*from, easy, fuse});
    }
}

void addPart(Walk& walk, const Nets& nets, const PartId& id, const Features& features) {
    if (features.source) {
        if (const auto plus = netAt(nets, id, features.source->plus)) {
            walk.starts.push_back(*plus);
        }
        if (const auto minus = netAt(nets, id, features.source->minus)) {
            walk.found[*minus].returns = true;
        }
        return;
    }
    for (const CurrentPath& path : features.paths) {
        addPath(walk, nets, id, path, features);
    }
}

/// Notes that current comes to a net behind `fuse` (or behind none). False where that was known.
bool note(Protection& protection, const std::optional<PartId>& fuse) {
    protection.live = true;
    if (fuse) {
        return protection.fuses.insert(*fuse).second;
    }
    const bool isNew = !protection.unfused;
    protection.unfused = true;
    return isNew;
}

struct Step {
    NetIndex net;
    std::optional<PartId> fuse;
};

/// Walks on from `open`; nets for which `closed` holds are not entered.
void spread(Walk& walk, std::deque<Step> open, bool throughLoads, const std::vector<bool>& closed) {
    while (!open.empty()) {
        const Step step = open.front();
        open.pop_front();
        for (const Way& way : walk.ways[step.net]) {
            const bool back = way.fuse && way.fuse == step.fuse;
            if (back || closed[way.to] || walk.found[way.to].returns || (!way.easy && !throughLoads)) {
                continue;
            }
            const auto fuse = way.fuse ? way.fuse : step.fuse;
            if (note(walk.found[way.to], fuse)) {
                open.push_back({way.to, fuse});
            }
        }
    }
}

std::deque<Step> everythingLive(const Walk& walk) {
    std::deque<Step> open;
    for (NetIndex net = 0; net < walk.found.size(); ++net) {
        if (walk.found[net].unfused) {
            open.push_back({net, std::nullopt});
        }
        for (const PartId& fuse : walk.found[net].fuses) {
            open.push_back({net, fuse});
        }
    }
    return open;
}

void walkFromSupplies(Walk& walk) {
    std::vector<bool> closed(walk.found.size(), false);
    for (const NetIndex start : walk.starts) {
        closed[start] = true;
        if (!walk.found[start].returns) {
            note(walk.found[start], std::nullopt);
        }
    }
    spread(walk, everythingLive(walk), false, closed);
    for (NetIndex net = 0; net < closed.size(); ++net) {
        closed[net] = walk.found[net].live;
    }
    spread(walk, everythingLive(walk), true, closed);
}

} // namespace

std::map<WireId, Protection> wireProtection(const Circuit& circuit, const Nets& nets) {
    Walk walk(nets.nets.size());
    for (NetIndex net = 0; net < nets.nets.size(); ++net) {
        walk.found[net].returns = nets.nets[net].ground;
    }
    for (const auto& [id, part] : circuit.parts) {
        addPart(walk, nets, id, kindOf(part).features(part));
    }
    walkFromSupplies(walk);
    std::map<WireId, Protection> byWire;
    for (const auto& [id, wire] : circuit.wires) {
        if (const auto net = netAt(nets, wire.from.part, wire.from.terminal)) {
            byWire[id] = walk.found[*net];
        }
    }
    return byWire;
}

} // namespace pumpwright
