#include "core/files/circuit_file.h"
#include "core/simulate/drive.h"
#include "tests/support/catch.h"

#include <filesystem>

using namespace pumpwright;

// Conservation of energy, mass and charge, to a millionth of what passes through.
TEST_CASE("every sample's drive conserves energy, gas and charge", "[handbook][balances]") {
    for (const auto& file : std::filesystem::directory_iterator("samples")) {
        const auto circuit = readCircuit(file.path().string());
        REQUIRE(circuit);
        const DriveResult drive = simulateDrive(*circuit);
        REQUIRE(drive.status == DriveStatus::Finished);
        INFO(file.path());
        for (const Balance& balance :
             {drive.balances.energy_J, drive.balances.gas_kg, drive.balances.charge_C}) {
            CAPTURE(balance.in, balance.out, balance.held, balance.offShare);
            CHECK(balance.in > 0);
            CHECK(balance.offShare < 1e-6);
        }
    }
}
