#include "app/desktop/document/document.h"
#include "core/files/circuit_file.h"
#include "core/study/trials.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

using namespace pumpwright;

namespace {

/// Sets a value of a part, as the Nameplate does.
Edit setting(const Circuit& circuit, const char* id, const char* key, double value) {
    Part part = circuit.parts.at({id});
    part.values[key] = value;
    return {std::string("Set ") + key, {Put<PartId, Part>{{id}, std::make_shared<const Part>(part)}}};
}

} // namespace

TEST_CASE("the last steps become a trial: the circuit is as before them, and the trial brings them back",
          "[document][trials]") {
    Document document;
    CircuitBuilder builder = vanVacuumSide();
    document.startNew(addPumpFeed(builder).build());
    document.apply(setting(document.circuit(), "F1", "rating_A", 20));
    const Circuit before = document.circuit();
    document.apply(setting(document.circuit(), "F1", "rating_A", 25));
    document.apply({"Remove B1", {Put<PartId, Part>{{"B1"}, nullptr}}});
    const Circuit changed = document.circuit();

    document.makeTrialOfLast(2);
    Circuit withTrial = document.circuit();
    REQUIRE(withTrial.trials.size() == 1);
    const Trial trial = withTrial.trials.begin()->second;
    CHECK(trial.name == "Set rating_A");
    withTrial.trials.clear();
    CHECK(withTrial == before);

    Circuit tried = trialCircuit(document.circuit(), trial);
    tried.trials.clear();
    CHECK(tried == changed);

    document.takeTrial(document.circuit().trials.begin()->first);
    Circuit taken = document.circuit();
    taken.trials.clear();
    CHECK(taken == changed);

    document.undoStack().undo(); // the taking
    document.undoStack().undo(); // the making
    CHECK(document.circuit() == changed);
}

TEST_CASE("a trial made of one step twice changed keeps the last value", "[document][trials]") {
    Document document;
    CircuitBuilder builder = vanVacuumSide();
    document.startNew(addPumpFeed(builder).build());
    const Circuit before = document.circuit();
    document.apply(setting(document.circuit(), "F1", "rating_A", 20));
    document.apply(setting(document.circuit(), "F1", "rating_A", 30));
    document.makeTrialOfLast(2);
    const Trial& trial = document.circuit().trials.begin()->second;
    CHECK(trialCircuit(before, trial).parts.at({"F1"}).values.at("rating_A") == 30);
    CHECK(document.circuit().parts == before.parts);
}
