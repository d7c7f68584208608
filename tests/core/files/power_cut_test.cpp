// Whatever a disk may hold when the power goes in the middle of a save: the file is the old or the new one,
// whole.

#include "tests/support/catch.h"
#include "tests/support/recorded_disk.h"
#include "tests/support/temp_folder.h"

using namespace pumpwright;

namespace {

const std::string kName = "van.pumpwright";
const std::string kKept = kName + "~";
const std::string kOlder(30, 'x');
const std::string kOld(50, 'o');
const std::string kNew(70, 'n');
constexpr std::size_t kPiece = 30; // two or three writes a file

std::vector<DiskStep> stepsOfSave(const FolderContent& before) {
    const TempFolder folder;
    for (const auto& [name, content] : before) {
        folder.write(name, content);
    }
    RecordedCalls calls(kPiece);
    REQUIRE(replaceFile(folder.path() / kName, kNew, calls));
    return calls.steps();
}

/// States in which the file is neither what it was nor what it shall be.
struct Judged {
    std::size_t states = 0;
    std::size_t bad = 0;
};

template <class IsGood>
Judged judged(const FolderContent& before, const std::vector<DiskStep>& steps, const IsGood& isGood) {
    Judged sum;
    for (std::size_t count = 0; count <= steps.size(); ++count) {
        sum.states += forEachStateAfter(before, steps, count, [&](const FolderContent& found) {
            sum.bad += isGood(found, count == steps.size()) ? 0U : 1U;
        });
    }
    return sum;
}

bool isOldOrNew(const FolderContent& found, bool saved) {
    const auto file = found.find(kName);
    return file != found.end() && (file->second == kNew || (!saved && file->second == kOld));
}

bool isKeptWhole(const FolderContent& found, bool saved) {
    const auto kept = found.find(kKept);
    return kept != found.end() && (kept->second == kOld || (!saved && kept->second == kOlder));
}

} // namespace

TEST_CASE("after a power cut the file is the old or the new one, and after a save the new one",
          "[files][power-cut]") {
    const FolderContent before{{kName, kOld}, {kKept, kOlder}};
    const auto steps = stepsOfSave(before);
    const Judged sum = judged(before, steps, isOldOrNew);
    INFO(sum.states << " states after " << steps.size() << " steps");
    CHECK(sum.bad == 0);
    CHECK(sum.states > 300);
    CHECK(judged(before, steps, isKeptWhole).bad == 0);
}

TEST_CASE("after a power cut a new file is whole or not there", "[files][power-cut]") {
    const auto steps = stepsOfSave({});
    const Judged sum = judged({}, steps, [](const FolderContent& found, bool saved) {
        const auto file = found.find(kName);
        return file == found.end() ? !saved : file->second == kNew;
    });
    INFO(sum.states << " states after " << steps.size() << " steps");
    CHECK(sum.bad == 0);
}

TEST_CASE("a save that leaves out a sync is caught", "[files][power-cut]") {
    const FolderContent before{{kName, kOld}, {kKept, kOlder}};
    const auto steps = stepsOfSave(before);
    std::size_t syncs = 0;
    for (std::size_t at = 0; at < steps.size(); ++at) {
        if (std::holds_alternative<FileSynced>(steps[at]) ||
            std::holds_alternative<FolderSynced>(steps[at])) {
            ++syncs;
            auto without = steps;
            without.erase(without.begin() + static_cast<std::ptrdiff_t>(at));
            CHECK(judged(before, without, isOldOrNew).bad + judged(before, without, isKeptWhole).bad > 0);
        }
    }
    CHECK(syncs == 3);
}
