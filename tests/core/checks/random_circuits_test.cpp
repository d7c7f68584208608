#include "tests/core/checks/run_rule.h"
#include "tests/support/random_circuit.h"
#include "tests/support/test_seed.h"

#include <cmath>

using namespace pumpwright;

TEST_CASE("whatever a file holds, every finding is complete and its edits can be taken back",
          "[checks][random]") {
    const std::uint64_t seed = testSeed();
    INFO("seed " << seed);
    RandomCircuits random(seed);
    for (int round = 0; round < 200; ++round) {
        INFO("circuit " << round);
        const Circuit circuit = random.circuit();
        for (const Finding& finding : allFindings(circuit)) {
            INFO(finding.rule << ": " << finding.what.english());
            checkComplete(finding);
            CHECK(std::isfinite(finding.value));
            CHECK(std::isfinite(finding.limit));
            for (const Remedy& remedy : finding.remedies) {
                if (remedy.edit) {
                    Circuit changed = circuit;
                    const Edit back = applyEdit(changed, *remedy.edit);
                    CHECK_FALSE(changed == circuit);
                    applyEdit(changed, back);
                    CHECK(changed == circuit);
                }
            }
        }
    }
}
