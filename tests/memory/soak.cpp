// soak SECONDS: draws, drives, checks, prints and takes back, over and over. What the program holds at the
// end of a round is the same in every round once the first ones are over.

#include "core/checks/rule.h"
#include "core/files/circuit_file.h"
#include "core/sheet/wiring_sheet.h"
#include "core/study/spread.h"

#include <fmt/core.h>
#include <malloc.h>
#include <unistd.h>

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <iterator>
#include <string_view>

using namespace pumpwright;

namespace {

constexpr int kFirstRounds = 3;

struct Held {
    std::size_t bytes; ///< in use, by the allocator's own count
    long handles;      ///< open files
};

Held held() {
    const std::filesystem::directory_iterator files("/proc/self/fd");
    return {::mallinfo2().uordblks, std::distance(begin(files), end(files))};
}

/// Everything that a user does in a minute; the circuit is as before.
void makeRound(Circuit& circuit, const std::filesystem::path& file) {
    const PartId fuse{"F1"};
    Part other = circuit.parts.contains(fuse) ? circuit.parts.at(fuse) : circuit.parts.begin()->second;
    other.label += " moved";
    const Edit inverse = applyEdit(circuit, {"Move", {putPart(freePartId(circuit), other)}});
    circuit.plan.duration_s = std::min(circuit.plan.duration_s, 20.0);
    const DriveResult drive = simulateDrive(circuit);
    const Nets nets = findNets(circuit);
    const auto findings = checkCircuit({circuit, nets, &drive});
    const WiringSheet sheet = wiringSheet(circuit, findings, circuitCheckSum(circuit));
    SpreadOptions spread;
    spread.count = 2;
    runSpread(circuit, spread);
    applyEdit(circuit, inverse);
    if (!writeCircuit(circuit, file) || readCircuit(file) != circuit) {
        fmt::print(stderr, "what was saved is not what was read\n");
        std::exit(1);
    }
}

} // namespace

int main(int argc, char** argv) {
    const std::string_view digits = argc > 2 ? argv[1] : "";
    int seconds = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), seconds);
    auto circuit = seconds > 0 ? readCircuit(argv[2]) : Result<Circuit>(tl::unexpected(Error{}));
    if (!circuit) {
        fmt::print(stderr, "usage: soak SECONDS CIRCUIT\n");
        return 2;
    }
    const auto file = std::filesystem::temp_directory_path() / fmt::format("pumpwright-soak-{}", ::getpid());
    const auto end = std::chrono::steady_clock::now() + std::chrono::seconds(seconds);
    Held first{};
    int rounds = 0;
    while (rounds <= 2 * kFirstRounds || std::chrono::steady_clock::now() < end) {
        makeRound(*circuit, file);
        first = ++rounds == kFirstRounds ? held() : first;
    }
    const Held last = held();
    std::filesystem::remove(file);
    std::filesystem::remove(file.string() + "~");
    fmt::print("{} rounds; held after {}: {} bytes, {} open files; at the end: {} bytes, {} open files\n",
               rounds, kFirstRounds, first.bytes, first.handles, last.bytes, last.handles);
    constexpr std::size_t kMostGrowth = 16'384; // threads that the allocator has not yet given back
    return last.bytes <= first.bytes + kMostGrowth && last.handles == first.handles ? 0 : 1;
}
