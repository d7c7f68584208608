#include "core/circuit/circuit.h"
#include "core/files/circuit_file.h"
#include "core/parts/document_fields.h"
#include "tests/support/catch.h"

#include <nlohmann/json.hpp>

#include <fstream>

using namespace pumpwright;

TEST_CASE("what a file leaves out has the default of the circuit itself", "[files][fields]") {
    const Wire wire;
    CHECK(field::kWireArea.standard == wire.area_m2);
    CHECK(field::kWireLength.standard == wire.length_m);
    CHECK(field::kPricePerMetre.standard == wire.price_perMetre);
    const Hose hose;
    CHECK(field::kHoseDiameter.standard == hose.innerDiameter_m);
    CHECK(field::kHoseLength.standard == hose.length_m);
    CHECK(field::kHoseLeak.standard == hose.leakHole_m);
    CHECK(field::kToleranceShare.standard == Tolerance().share);
    const ProjectLimits limits;
    CHECK(field::kLimitAmbient.standard == limits.ambient_K);
    CHECK(field::kVoltageDropShare.standard == limits.voltageDropShare);
    CHECK(field::kContinuousFuseShare.standard == limits.continuousFuseShare);
    CHECK(field::kLowestSupply.standard == limits.lowestSupply_V);
    CHECK(field::kParked.standard == limits.parked_s);
    CHECK(field::kDrivenPerYear.standard == limits.drivenPerYear_s);
    CHECK(field::kRatedTemperature.standard == Part().ratedTemperature_K);
    const DrivePlan plan;
    CHECK(field::kPlanDuration.standard == plan.duration_s);
    CHECK(field::kPlanAmbient.standard == plan.ambient_K);
    CHECK(field::kInitialVacuum.standard == plan.initialVacuum_Pa);
    const Press press;
    CHECK(field::kPressHold.standard == press.hold_s);
    CHECK(field::kPressForce.standard == press.force_N);
    CHECK(field::kPressRise.standard == press.rise_s);
    CHECK(field::kPrice.standard == Part().price);
    CHECK(field::kAltitude.standard == AltitudePoint().altitude_m);
    CHECK(field::kWaivedValue.standard == Waiver().value);
}

TEST_CASE("the published schema has the ranges and defaults that the reader has", "[files][fields][schema]") {
    const auto text = [] {
        std::ifstream file("docs/circuit.schema.json");
        return nlohmann::json::parse(file);
    }();
    const auto check = [&](const std::string& section, const ParameterSpec& spec) {
        CAPTURE(section, std::string(spec.key));
        nlohmann::json range = text.at("$defs").at(section).at("properties").at(std::string(spec.key));
        if (range.contains("$ref")) {
            range = text.at(nlohmann::json::json_pointer(range.at("$ref").get<std::string>().substr(1)));
        }
        CHECK(range.at("minimum").get<double>() == spec.low);
        CHECK(range.at("maximum").get<double>() == spec.high);
        CHECK(range.at("default").get<double>() == spec.standard);
    };
    check("part", field::kPrice);
    check("wire", field::kPricePerMetre);
    check("wire", field::kWireArea);
    check("wire", field::kWireLength);
    check("hose", field::kHoseDiameter);
    check("hose", field::kHoseLength);
    check("hose", field::kHoseLeak);
    check("tolerance", field::kToleranceShare);
    check("limits", field::kLimitAmbient);
    check("limits", field::kVoltageDropShare);
    check("limits", field::kContinuousFuseShare);
    check("limits", field::kLowestSupply);
    check("limits", field::kParked);
    check("limits", field::kDrivenPerYear);
    check("part", field::kRatedTemperature);
    check("plan", field::kPlanDuration);
    check("plan", field::kPlanAmbient);
    check("plan", field::kInitialVacuum);
    check("press", field::kAtTime);
    check("press", field::kPressHold);
    check("press", field::kPressForce);
    check("press", field::kPressRise);
    check("chargingSpan", field::kFromTime);
    check("chargingSpan", field::kToTime);
    check("altitudePoint", field::kAltitude);
    check("waiver", field::kWaivedValue);
}
