#include "core/circuit/edit.h"

#include "core/circuit/circuit.h"

#include <algorithm>
#include <set>

namespace pumpwright {
namespace {

template <class Key, class Object>
Put<Key, Object> swapIn(std::map<Key, Object>& objects, const Put<Key, Object>& put) {
    Put<Key, Object> inverse{put.id, nullptr};
    const auto found = objects.find(put.id);
    if (found != objects.end()) {
        inverse.object = std::make_shared<const Object>(std::move(found->second));
    }
    if (put.object) {
        objects.insert_or_assign(put.id, *put.object);
    } else if (found != objects.end()) {
        objects.erase(found);
    }
    return inverse;
}

template <class Section>
Replace<Section> swapIn(Section& current, const Replace<Section>& replace) {
    Replace<Section> inverse{std::make_shared<const Section>(std::move(current))};
    current = *replace.section;
    return inverse;
}

struct Applier {
    Circuit& circuit;

    Change operator()(const Put<PartId, Part>& put) const { return swapIn(circuit.parts, put); }
    Change operator()(const Put<WireId, Wire>& put) const { return swapIn(circuit.wires, put); }
    Change operator()(const Put<HoseId, Hose>& put) const { return swapIn(circuit.hoses, put); }
    Change operator()(const Put<std::string, Trial>& put) const { return swapIn(circuit.trials, put); }
    Change operator()(const Replace<DrivePlan>& replace) const { return swapIn(circuit.plan, replace); }
    Change operator()(const Replace<TitleBlock>& replace) const { return swapIn(circuit.title, replace); }
    Change operator()(const Replace<ProjectLimits>& replace) const { return swapIn(circuit.limits, replace); }
    Change operator()(const Replace<Waivers>& replace) const { return swapIn(circuit.waivers, replace); }
};

template <class Key, class Object>
Change put(Key id, Object object) {
    return Put<Key, Object>{std::move(id), std::make_shared<const Object>(std::move(object))};
}

template <class IdType, class Object>
IdType freeId(const std::map<IdType, Object>& objects, char letter) {
    for (std::size_t number = objects.size() + 1;; ++number) {
        IdType id{letter + std::to_string(number)};
        if (!objects.contains(id)) {
            return id;
        }
    }
}

template <class Object>
bool sameObject(const std::shared_ptr<const Object>& one, const std::shared_ptr<const Object>& other) {
    return one == other || (one && other && *one == *other);
}

struct SameChange {
    template <class Key, class Object>
    bool operator()(const Put<Key, Object>& one, const Put<Key, Object>& other) const {
        return one.id == other.id && sameObject(one.object, other.object);
    }
    template <class Section>
    bool operator()(const Replace<Section>& one, const Replace<Section>& other) const {
        return sameObject(one.section, other.section);
    }
    template <class One, class Other>
    bool operator()(const One&, const Other&) const {
        return false;
    }
};

void takeMoves(const DrivePlan& plan, const PartId& id, Edit& edit) {
    DrivePlan shorter = plan;
    std::erase_if(shorter.switchMoves, [&](const SwitchMove& move) { return move.part == id; });
    if (shorter.switchMoves.size() != plan.switchMoves.size()) {
        edit.changes.push_back(replacePlan(std::move(shorter)));
    }
}

void takeWaivers(const Waivers& waivers, const std::set<std::string>& gone, Edit& edit) {
    Waivers left = waivers;
    std::erase_if(left, [&](const Waiver& waiver) {
        return std::any_of(waiver.subjects.begin(), waiver.subjects.end(),
                           [&](const std::string& subject) { return gone.contains(subject); });
    });
    if (left.size() != waivers.size()) {
        edit.changes.push_back(replaceWaivers(std::move(left)));
    }
}

} // namespace

bool operator==(const Edit& one, const Edit& other) {
    return one.name == other.name &&
           std::equal(one.changes.begin(), one.changes.end(), other.changes.begin(), other.changes.end(),
                      [](const Change& a, const Change& b) { return std::visit(SameChange{}, a, b); });
}

Edit applyEdit(Circuit& circuit, const Edit& edit) {
    Edit inverse{edit.name, {}};
    inverse.changes.reserve(edit.changes.size());
    for (const Change& change : edit.changes) {
        inverse.changes.push_back(std::visit(Applier{circuit}, change));
    }
    std::reverse(inverse.changes.begin(), inverse.changes.end());
    return inverse;
}

Change putPart(PartId id, Part part) {
    return put(std::move(id), std::move(part));
}
Change takePart(PartId id) {
    return Put<PartId, Part>{std::move(id), nullptr};
}
Change putWire(WireId id, Wire wire) {
    return put(std::move(id), std::move(wire));
}
Change takeWire(WireId id) {
    return Put<WireId, Wire>{std::move(id), nullptr};
}
Change putHose(HoseId id, Hose hose) {
    return put(std::move(id), std::move(hose));
}
Change takeHose(HoseId id) {
    return Put<HoseId, Hose>{std::move(id), nullptr};
}
Change putTrial(std::string id, Trial trial) {
    return put(std::move(id), std::move(trial));
}
Change takeTrial(std::string id) {
    return Put<std::string, Trial>{std::move(id), nullptr};
}

Change replacePlan(DrivePlan plan) {
    return Replace<DrivePlan>{std::make_shared<const DrivePlan>(std::move(plan))};
}

Change replaceTitle(TitleBlock title) {
    return Replace<TitleBlock>{std::make_shared<const TitleBlock>(std::move(title))};
}

Change replaceLimits(ProjectLimits limits) {
    return Replace<ProjectLimits>{std::make_shared<const ProjectLimits>(limits)};
}

Change replaceWaivers(Waivers waivers) {
    return Replace<Waivers>{std::make_shared<const Waivers>(std::move(waivers))};
}

Edit removalOfPart(const Circuit& circuit, const PartId& id) {
    const auto part = circuit.parts.find(id);
    Edit edit{part == circuit.parts.end() ? "Delete" : "Delete " + part->second.reference, {}};
    std::set<std::string> gone{id.text};
    for (const auto& [wireId, wire] : circuit.wires) {
        if (wire.from.part == id || wire.to.part == id) {
            edit.changes.push_back(takeWire(wireId));
            gone.insert(wireId.text);
        }
    }
    for (const auto& [hoseId, hose] : circuit.hoses) {
        if (hose.from.part == id || hose.to.part == id) {
            edit.changes.push_back(takeHose(hoseId));
            gone.insert(hoseId.text);
        }
    }
    takeMoves(circuit.plan, id, edit);
    takeWaivers(circuit.waivers, gone, edit);
    edit.changes.push_back(takePart(id));
    return edit;
}

PartId freePartId(const Circuit& circuit) {
    return freeId(circuit.parts, 'p');
}
WireId freeWireId(const Circuit& circuit) {
    return freeId(circuit.wires, 'w');
}
HoseId freeHoseId(const Circuit& circuit) {
    return freeId(circuit.hoses, 'h');
}

std::string freeReference(const Circuit& circuit, const std::string& letter) {
    std::set<std::string> used;
    for (const auto& [id, part] : circuit.parts) {
        used.insert(part.reference);
    }
    for (const auto& [id, wire] : circuit.wires) {
        used.insert(wire.reference);
    }
    for (const auto& [id, hose] : circuit.hoses) {
        used.insert(hose.reference);
    }
    for (int number = 1;; ++number) {
        std::string reference = letter + std::to_string(number);
        if (!used.contains(reference)) {
            return reference;
        }
    }
}

} // namespace pumpwright
