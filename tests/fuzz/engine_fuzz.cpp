// The input's bytes decide over a circuit of any parts, joined anyhow, with any values in their ranges. It is
// driven and checked: whatever it is, that ends, with numbers, or says why not.

#include "core/checks/rule.h"
#include "core/nets/nets.h"
#include "core/simulate/drive.h"
#include "tests/fuzz/compact_circuit.h"
#include "tests/fuzz/promise.h"

#include <algorithm>
#include <cmath>
#include <ctime>

using namespace pumpwright;

namespace {

constexpr int kMostParts = 9;
/// A circuit may chatter at each microsecond; what it came to by then is looked at all the same.
constexpr double kMostSeconds = 0.5;

DriveResult driven(const Circuit& circuit) {
    const std::clock_t start = std::clock();
    std::atomic<bool> enough = false;
    DriveOptions options;
    options.cancel = &enough;
    options.progress = [&](double) {
        enough = static_cast<double>(std::clock() - start) > kMostSeconds * CLOCKS_PER_SEC;
    };
    return simulateDrive(circuit, options);
}

void checkDrive(const DriveResult& drive) {
    if (drive.status == DriveStatus::Stopped) {
        require(!drive.message.empty(), "a drive that stops says why");
        require(drive.message.find("nan") == std::string::npos, "a message holds no nan");
    }
    require(std::isfinite(drive.recording.duration_s), "a drive has a length");
    for (const Channel& channel : drive.recording.channels) {
        require(std::is_sorted(channel.times_s.begin(), channel.times_s.end()), "time goes on");
        require(std::all_of(channel.values.begin(), channel.values.end(),
                            [](float v) { return std::isfinite(v); }),
                "every sample is a number");
    }
}

void checkFindings(const Circuit& circuit, const DriveResult& drive) {
    const Nets nets = findNets(circuit);
    for (const Finding& finding : checkCircuit({circuit, nets, &drive})) {
        require(!std::isnan(finding.value) && !std::isnan(finding.limit), "a finding's value is a number");
        for (const Remedy& remedy : finding.remedies) {
            if (remedy.edit) {
                Circuit mended = circuit;
                const Edit inverse = applyEdit(mended, *remedy.edit);
                applyEdit(mended, inverse);
                require(mended == circuit, "a remedy can be taken back");
            }
        }
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    RandomCircuits random(std::span(data, size));
    const Circuit circuit = compactCircuit(random, kMostParts);
    const DriveResult drive = driven(circuit);
    checkDrive(drive);
    checkFindings(circuit, drive);
    return 0;
}
