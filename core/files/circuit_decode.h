#pragma once

#include "core/circuit/circuit.h"
#include "core/files/object_reader.h"

#include <string>
#include <utility>

namespace pumpwright {

/// The circuit that a tree describes. Faults go to `fault`; the circuit is of use only if there is none.
Circuit decodedCircuit(const OrderedJson& tree, ReadFault& fault);

// The sections, each from its own object. The pair is id and object.
std::pair<PartId, Part> decodedPart(const OrderedJson& value, const std::string& pointer, ReadFault& fault);
std::pair<WireId, Wire> decodedWire(const OrderedJson& value, const std::string& pointer, ReadFault& fault);
std::pair<HoseId, Hose> decodedHose(const OrderedJson& value, const std::string& pointer, ReadFault& fault);
std::pair<std::string, Trial> decodedTrial(const OrderedJson& value, const std::string& pointer,
                                           ReadFault& fault);
DrivePlan decodedPlan(const OrderedJson& value, const std::string& pointer, ReadFault& fault);
TitleBlock decodedTitle(const OrderedJson& value, const std::string& pointer, ReadFault& fault);
ProjectLimits decodedLimits(const OrderedJson& value, const std::string& pointer, ReadFault& fault);
Waiver decodedWaiver(const OrderedJson& value, const std::string& pointer, ReadFault& fault);

/// Reads the `values` and `choices` of a part or of a catalogue entry against its kind.
void readRatings(ObjectReader& object, const PartKind& kind, std::map<std::string, double>& values,
                 std::map<std::string, std::string>& choices);

/// The kind named under "kind"; a fault with the nearest known name, and nullptr, if there is none such.
const PartKind* readKind(ObjectReader& object);

/// Objects with ids, from a list. `readOne(value, pointer, fault)` answers a pair of id and object.
template <class Map, class ReadOne>
Map decodedById(ObjectReader& object, std::string_view key, ReadOne readOne) {
    Map map;
    object.forEach(key, [&](const OrderedJson& value, const std::string& pointer) {
        auto one = readOne(value, pointer, object.fault());
        if (!map.insert(std::move(one)).second) {
            object.fault().refuse(ErrorCode::DuplicateId, pointer + "/id",
                                  "The id is used twice. Give each object an id of its own.");
        }
    });
    return map;
}

} // namespace pumpwright
