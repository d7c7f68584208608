#pragma once

#include "core/circuit/ids.h"

#include <memory>
#include <string>
#include <variant>
#include <vector>

namespace pumpwright {

struct Circuit;
struct Part;
struct Wire;
struct Hose;
struct DrivePlan;
struct TitleBlock;
struct ProjectLimits;
struct Trial;
struct Waiver;

/// Puts `object` under `id`, in place of what is there; without an object, takes away what is there.
/// The object is shared and never changed, so that copies of an edit are cheap.
template <class IdType, class Object>
struct Put {
    IdType id;
    std::shared_ptr<const Object> object;
};

/// Replaces a section of the circuit that exists once.
template <class Section>
struct Replace {
    std::shared_ptr<const Section> section;
};

using Waivers = std::vector<Waiver>;

using Change =
    std::variant<Put<PartId, Part>, Put<WireId, Wire>, Put<HoseId, Hose>, Put<std::string, Trial>,
                 Replace<DrivePlan>, Replace<TitleBlock>, Replace<ProjectLimits>, Replace<Waivers>>;

/// A change to a circuit as data: changes made in order. `name` is what undo shows: "Move K1".
struct Edit {
    std::string name;
    std::vector<Change> changes;
};

/// Equal names and equal changes, object by object.
bool operator==(const Edit& one, const Edit& other);

/// Makes the edit and returns the one that exactly takes it back.
Edit applyEdit(Circuit& circuit, const Edit& edit);

// Single changes, to build edits from.
Change putPart(PartId id, Part part);
Change takePart(PartId id);
Change putWire(WireId id, Wire wire);
Change takeWire(WireId id);
Change putHose(HoseId id, Hose hose);
Change takeHose(HoseId id);
Change putTrial(std::string id, Trial trial);
Change takeTrial(std::string id);
Change replacePlan(DrivePlan plan);
Change replaceTitle(TitleBlock title);
Change replaceLimits(ProjectLimits limits);
Change replaceWaivers(Waivers waivers);

/// Takes the part away together with what would point to nothing without it: the wires and hoses that end on
/// it, its moves in the drive plan, and waivers that name it or one of those wires and hoses.
Edit removalOfPart(const Circuit& circuit, const PartId& id);

/// An id that the circuit does not use: letter and the next number, "p12".
PartId freePartId(const Circuit& circuit);
WireId freeWireId(const Circuit& circuit);
HoseId freeHoseId(const Circuit& circuit);

/// The lowest free reference with this letter code: "K2".
std::string freeReference(const Circuit& circuit, const std::string& letter);

} // namespace pumpwright
