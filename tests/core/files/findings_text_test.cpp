#include "core/files/findings_text.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

using namespace pumpwright;

namespace {

Finding finding(const std::string& title, SignalWord word) {
    Finding one;
    one.rule = "some-rule";
    one.title = title;
    one.word = word;
    one.what = say("P1 carries 3 A and may carry 2 A.");
    one.source = "common practice, no published source";
    one.why = say("It gets hot.");
    one.parts = {PartId{"P1"}};
    one.remedies = {{say("Take a thicker wire."), std::nullopt}, {say("Take a smaller lamp."), std::nullopt}};
    return one;
}

std::string markdownOf(const std::vector<Finding>& findings) {
    Circuit circuit = CircuitBuilder().part("lamp", "P1").build();
    circuit.title.title = "Lamp";
    return findingsMarkdown({"lamp.pumpwright", circuit, DriveResult{}, findings});
}

} // namespace

TEST_CASE("findings as Markdown say all that a finding says, open ones first", "[files][findings]") {
    Finding accepted = finding("Accepted thing", SignalWord::Danger);
    accepted.waiver = Waiver{"some-rule", {}, "measured on the bench", "ab", 0};
    const std::string text = markdownOf({accepted, finding("Open thing", SignalWord::Caution)});
    for (const char* words :
         {"# Findings: Lamp\n", "- **File:** lamp.pumpwright\n", "- **Open, DANGER:** 0\n",
          "- **Open, CAUTION:** 1\n", "## CAUTION: Open thing\n", "- **About:** P1\n",
          "- **Found:** P1 carries 3 A and may carry 2 A.\n", "- **Why it matters:** It gets hot.\n",
          "- **Remedy:** Take a thicker wire.\n", "- **Remedy:** Take a smaller lamp.\n",
          "- **Limit from:** common practice, no published source\n",
          "- **Accepted:** measured on the bench (ab)\n"}) {
        INFO(words);
        CHECK(text.find(words) != std::string::npos);
    }
    CHECK(text.find("Open thing") < text.find("Accepted thing"));
}

TEST_CASE("without findings the Markdown promises nothing", "[files][findings]") {
    CHECK(markdownOf({}).find("no proof that the circuit is safe") != std::string::npos);
}

TEST_CASE("texts can't become markup", "[files][findings]") {
    // ASCII punctuation after a backslash stands for itself: CommonMark 0.30, section 2.4.
    CHECK(markdownText("<b>a & b</b>") == "\\<b\\>a \\& b\\</b\\>");
    CHECK(markdownText("*a* _b_ `c` [d](e) #f |g|") == "\\*a\\* \\_b\\_ \\`c\\` \\[d\\](e) \\#f \\|g\\|");
    CHECK(markdownText("a\n# b") == "a \\# b");
    CHECK(markdownText("2.5 mm², 0.75") == "2.5 mm², 0.75");
}
