#include "core/checks/survey.h"
#include "core/checks/wording.h"
#include "core/parts/part_kind.h"

#include <fmt/format.h>

#include <map>

namespace pumpwright {
namespace {

// What differs between parts, wires and hoses.
std::string letterOf(const Part& part) {
    return std::string(kindOf(part).letter());
}
std::string letterOf(const Wire&) {
    return "W";
}
std::string letterOf(const Hose&) {
    return "H";
}
Change put(const PartId& id, Part part) {
    return putPart(id, std::move(part));
}
Change put(const WireId& id, Wire wire) {
    return putWire(id, std::move(wire));
}
Change put(const HoseId& id, Hose hose) {
    return putHose(id, std::move(hose));
}
std::map<PartId, Part>& objectsOf(Circuit& circuit, const PartId&) {
    return circuit.parts;
}
std::map<WireId, Wire>& objectsOf(Circuit& circuit, const WireId&) {
    return circuit.wires;
}
std::map<HoseId, Hose>& objectsOf(Circuit& circuit, const HoseId&) {
    return circuit.hoses;
}

/// What such objects are called.
struct Sort {
    std::string_view one;
    std::string_view many;
};

/// Gives all but the first of these the next free reference.
template <class IdType>
Edit renumbered(const Survey& survey, const std::vector<IdType>& ids, bool firstKeeps, const Sort& sort) {
    Circuit draft = survey.circuit();
    Edit edit{say("Give every {} its own reference", said(sort.one)).english(), {}};
    for (std::size_t i = firstKeeps ? 1 : 0; i < ids.size(); ++i) {
        auto& object = objectsOf(draft, ids[i]).at(ids[i]);
        object.reference = freeReference(draft, letterOf(object));
        edit.changes.push_back(put(ids[i], object));
    }
    return edit;
}

/// Findings about one sort of object. `subjects` is where a finding lists it.
template <class IdType, class Object>
void add(const Rule& rule, const Survey& survey, const std::map<IdType, Object>& objects, const Sort& sort,
         std::vector<IdType> Finding::*subjects, std::vector<Finding>& findings) {
    std::map<std::string, std::vector<IdType>> byReference;
    for (const auto& [id, object] : objects) {
        byReference[object.reference].push_back(id);
    }
    for (const auto& [reference, ids] : byReference) {
        const bool nameless = reference.empty();
        if (ids.size() < 2 && !nameless) {
            continue;
        }
        Finding finding = newFinding(rule);
        finding.*subjects = ids;
        finding.value = static_cast<double>(ids.size());
        finding.limit = nameless ? 0 : 1;
        finding.what = !nameless         ? say("{} {} are called {}.", ids.size(), said(sort.many), reference)
                       : ids.size() == 1 ? say("1 {} has no reference.", said(sort.one))
                                         : say("{} {} have no reference.", ids.size(), said(sort.many));
        finding.why = say("On the wiring sheet nobody can tell which of them is meant.");
        finding.remedies = {
            {say("Give them the next free references."), renumbered(survey, ids, !nameless, sort)}};
        findings.push_back(std::move(finding));
    }
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    add(rule, survey, survey.circuit().parts, {words("part"), words("parts")}, &Finding::parts, findings);
    add(rule, survey, survey.circuit().wires, {words("wire"), words("wires")}, &Finding::wires, findings);
    add(rule, survey, survey.circuit().hoses, {words("hose"), words("hoses")}, &Finding::hoses, findings);
    return findings;
}

} // namespace

extern const Rule kReferenceNotUnique{
    "reference-not-unique",
    words("Reference missing or given twice"),
    SignalWord::Notice,
    words("IEC 81346-1: a reference designates one object; value from memory"),
    false,
    check};

} // namespace pumpwright
