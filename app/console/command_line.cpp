#include "app/console/command_line.h"

#include "app/console/command_help.h"
#include "core/files/nearest_word.h"
#include "core/study/made_plan.h"
#include "core/study/sweep.h"
#include "core/units/quantity_kind.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <filesystem>

namespace pumpwright {
namespace {

constexpr char kAbout[] = "Pumpwright: a workbench for fitting an electric vacuum pump to a brake booster.\n"
                          "Brakes are safety-critical. Results are estimates from the values entered; have "
                          "the work inspected by a\n"
                          "qualified person. Local roadworthiness law decides.";

constexpr char kStatuses[] =
    "Exit status: 0 nothing at or above the asked signal word, 1 findings or a drive that could not be\n"
    "finished, 2 bad use, 3 a file that can't be read or written, 4 the program failed itself, 130 "
    "interrupted.";

struct CommandName {
    std::string_view name;
    Command command;
};

constexpr std::array kCommands{
    CommandName{"check", Command::Check},   CommandName{"drive", Command::Drive},
    CommandName{"sheet", Command::Sheet},   CommandName{"wires", Command::Wires},
    CommandName{"parts", Command::Parts},   CommandName{"schematic", Command::Schematic},
    CommandName{"nets", Command::Nets},     CommandName{"compare", Command::Compare},
    CommandName{"trials", Command::Trials}, CommandName{"breakdowns", Command::Breakdowns},
    CommandName{"spread", Command::Spread}, CommandName{"sweep", Command::Sweep},
    CommandName{"fit", Command::Fit},       CommandName{"plan", Command::Plan}};

/// Texts as they stand on the command line; numbers among them are read by core/units, which knows units and
/// no locale.
struct Texts {
    std::string atLeast = "caution";
    std::string every = "0.1 s";
    std::string sureTo;
    bool json = false;
    bool csv = false;
    bool markdown = false;
};

void addForms(CLI::App& command, Texts& texts, bool withCsv) {
    CLI::Option* json = command.add_flag("--json", texts.json, "Print JSON for programs");
    if (withCsv) {
        command.add_flag("--csv", texts.csv, "Print comma-separated values with a head line")->excludes(json);
    }
}

CLI::App* addCommand(CLI::App& app, Request& request, const char* name, const char* about) {
    CLI::App* command = app.add_subcommand(name, about);
    command->add_option("FILE", request.file, "Circuit file")->required();
    return command;
}

void addChecking(CLI::App& app, Request& request, Texts& texts) {
    CLI::App* check = addCommand(app, request, "check", "Print what the rules find");
    check
        ->add_option("--at-least", texts.atLeast,
                     "Mildest signal word that makes the exit status 1: danger, warning, caution, notice")
        ->capture_default_str();
    addForms(*check, texts, false);
    check->add_flag("--markdown", texts.markdown, "Print Markdown to read or to mail")->excludes("--json");

    CLI::App* drive = addCommand(app, request, "drive", "Simulate the drive plan and print what it comes to");
    addForms(*drive, texts, true);
    drive->add_option("--every", texts.every, "Time between two rows of --csv")->capture_default_str();
    drive->add_option("--chart", request.chart, "Also write the drive chart to this file: .png or .svg");

    CLI::App* compare = addCommand(app, request, "compare", "Print what two circuits say differently");
    compare->add_option("OTHER", request.otherFile, "Circuit file as it is after")->required();
    addForms(*compare, texts, false);
}

void addSheets(CLI::App& app, Request& request, Texts& texts) {
    CLI::App* sheet = addCommand(app, request, "sheet", "Write the wiring sheet");
    sheet->add_option("--out", request.out, "PDF file to write")->required();
    sheet->add_option("--paper", request.paper, "A4, A3 or Letter")
        ->capture_default_str()
        ->check(CLI::IsMember({"A4", "A3", "Letter"}));
    sheet->add_flag("!--without-faults", request.faults,
                    "Leave out the fault-finding table, for which one thing after the other is let fail");

    CLI::App* schematic = addCommand(app, request, "schematic", "Write the schematic alone");
    schematic->add_option("--out", request.out, "File to write: .svg, .png or .pdf")->required();

    addForms(*addCommand(app, request, "wires", "Print the wires and hoses"), texts, true);
    addForms(*addCommand(app, request, "parts", "Print the parts list with prices"), texts, true);
    addCommand(app, request, "nets", "Print which terminals are joined")
        ->add_flag("--csv", texts.csv, "Print comma-separated values with a head line");
}

void addStudies(CLI::App& app, Request& request, Texts& texts) {
    addForms(*addCommand(app, request, "trials", "Compare the circuit with its trials"), texts, true);

    CLI::App* breakdowns = addCommand(app, request, "breakdowns", "Let one thing after the other fail");
    addForms(*breakdowns, texts, true);
    breakdowns->add_flag("--pairs", request.pairs, "Let every two things fail at once; takes longer");

    constexpr std::size_t kMostCars = 10'000'000;
    CLI::App* spread =
        addCommand(app, request, "spread", "Drive many cars whose parts differ by their tolerances");
    addForms(*spread, texts, true);
    spread->add_option("--count", request.count, "How many cars")
        ->check(CLI::Range(std::size_t{1}, kMostCars))
        ->capture_default_str();
    spread->add_option("--seed", request.seed, "Another seed gives other cars")->capture_default_str();
    spread->add_option("--from", request.from, "Number of the first car, to split a study over machines")
        ->capture_default_str();
    spread->add_option("--sure-to", texts.sureTo,
                       "End early once both shares are known to this, as \"2 %\", 95 % sure");
    spread
        ->add_option("--join", request.joined,
                     "Drive nothing: add up the rows of this file, from --csv before; may be repeated")
        ->expected(1)
        ->take_all();
}

std::string measureNames() {
    std::string names;
    for (const Measure& measure : measures()) {
        names += (names.empty() ? "" : ", ") + std::string(measure.id);
    }
    return names;
}

void addSweep(CLI::App& app, Request& request, Texts& texts) {
    CLI::App* sweep =
        addCommand(app, request, "sweep", "Drive with one value, or two, over a range, and find thresholds");
    addForms(*sweep, texts, true);
    sweep
        ->add_option("--over", request.over,
                     "Which value from where to where, as \"K2.delay_s=0 s..10 s\"; twice for a map")
        ->required()
        ->expected(1)
        ->take_all();
    sweep->add_option("--points", request.points, "Along each value: 21, or 9 of a map, unless stated")
        ->check(CLI::Range(2, kMostSweepPoints));
    sweep->add_option("--result", request.result, "One of: " + measureNames())->capture_default_str();
    sweep->add_option("--good-at", request.goodAt, "What is good enough, as \"45 kPa\"");
    sweep->add_option("--resolution", request.resolution,
                      "How finely a threshold is found: a thousandth of the first range, unless stated");
}

void addFit(CLI::App& app, Request& request, Texts& texts) {
    CLI::App* fit = addCommand(app, request, "fit", "Set values so that the drive meets a bench log");
    fit->add_option("LOG", request.log, "Bench log, CSV")->required();
    addForms(*fit, texts, true);
    fit->add_option("--value", request.values, "Value to fit, as \"A1.leakHole_m\"; may be repeated")
        ->required()
        ->expected(1)
        ->take_all();
    fit->add_option("--column", request.columns,
                    "What a column of the log is, as \"Vacuum=A1:vacuum in kPa\"; may be repeated")
        ->expected(1)
        ->take_all();
    fit->add_option("--time-offset", request.timeOffset, "Added to the times of the log")
        ->capture_default_str();
    fit->add_option("--out", request.out, "Also write the circuit with the fitted values to this file");
}

void addPlan(CLI::App& app, Request& request, Texts& texts) {
    std::string names;
    for (const DriveSort& sort : driveSorts()) {
        names += (names.empty() ? "" : ", ") + std::string(sort.id);
    }
    CLI::App* plan = addCommand(app, request, "plan", "Make a drive plan");
    addForms(*plan, texts, true);
    plan->add_option("--make", request.made, "Sort of drive: " + names)
        ->excludes(plan->add_option("--speed", request.speed, "Take the presses from this speed trace, CSV"));
    plan->add_option("--seed", request.seed, "Another seed makes another drive")->capture_default_str();
    plan->add_option("--duration", request.duration, "Of a drive that is made, as \"20 min\"");
    plan->add_option("--out", request.out, "Also write the circuit with the plan to this file");
}

void setUp(CLI::App& app, Request& request, Texts& texts) {
    app.footer(kStatuses);
    app.set_version_flag("--version", "pumpwright " PUMPWRIGHT_VERSION);
    app.require_subcommand(0, 1);
    app.add_option("FILE", request.file, "Without a command: the circuit to open in the window");
    addChecking(app, request, texts);
    addSheets(app, request, texts);
    addStudies(app, request, texts);
    addSweep(app, request, texts);
    addFit(app, request, texts);
    addPlan(app, request, texts);
}

CommandHelp helpOf(const CLI::App& app, const std::string& name) {
    CommandHelp help{name, name.empty() ? std::string() : app.get_description(), {}, {}};
    for (const CLI::Option* option : app.get_options()) {
        if (option->get_positional()) {
            help.operands.push_back(option->get_name(true));
        } else {
            help.options.push_back({"--" + option->get_lnames().front(),
                                    option->get_items_expected_max() > 0 ? option->get_type_name() : "",
                                    option->get_description()});
        }
    }
    return help;
}

Outcome badUse(const std::string& text) {
    return {ExitStatus::BadUse, "", fmt::format("pumpwright: {}\nTry: pumpwright --help\n", text)};
}

std::string lowerCase(std::string text) {
    std::ranges::transform(text, text.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return text;
}

std::optional<SignalWord> signalWordFrom(const std::string& text) {
    for (const SignalWord word :
         {SignalWord::Danger, SignalWord::Warning, SignalWord::Caution, SignalWord::Notice}) {
        if (lowerCase(text) == lowerCase(std::string(signalWordName(word)))) {
            return word;
        }
    }
    return std::nullopt;
}

/// A word that is no file but nearly a command was meant as one.
std::optional<Outcome> misspelledCommand(const std::vector<std::string>& arguments) {
    if (arguments.empty() || arguments.front().starts_with("-") ||
        std::filesystem::exists(std::filesystem::path(arguments.front()))) {
        return std::nullopt;
    }
    std::vector<std::string_view> names;
    for (const CommandName& command : kCommands) {
        names.push_back(command.name);
    }
    const std::string_view nearest = nearestWord(arguments.front(), names);
    if (nearest.empty() || nearest == arguments.front()) {
        return std::nullopt;
    }
    return badUse(
        fmt::format("there is no command \"{}\". Did you mean \"{}\"?", arguments.front(), nearest));
}

tl::expected<Request, Outcome> finished(Request request, const CLI::App& app, const Texts& texts) {
    for (const CommandName& command : kCommands) {
        if (app.got_subcommand(std::string(command.name))) {
            request.command = command.command;
        }
    }
    request.form = texts.json       ? OutputForm::Json
                   : texts.csv      ? OutputForm::Csv
                   : texts.markdown ? OutputForm::Markdown
                                    : OutputForm::People;
    const auto word = signalWordFrom(texts.atLeast);
    if (!word) {
        return tl::unexpected(badUse(
            fmt::format("--at-least \"{}\" is no signal word. Write danger, warning, caution or notice.",
                        texts.atLeast)));
    }
    request.atLeast = *word;
    const Result<double> every = parseQuantity(texts.every, QuantityKind::Time);
    if (!every) {
        return tl::unexpected(badUse(fmt::format("--every: {}", every.error().text)));
    }
    if (*every <= 0) {
        return tl::unexpected(badUse("--every must be more than 0 s, for example \"0.1 s\"."));
    }
    request.every_s = *every;
    if (!texts.sureTo.empty()) {
        const Result<double> sureTo = parseQuantity(texts.sureTo, QuantityKind::Share);
        if (!sureTo || *sureTo <= 0 || *sureTo >= 0.5) {
            return tl::unexpected(badUse("--sure-to must lie between 0 and 50 %, for example \"2 %\"."));
        }
        request.sureTo = *sureTo;
    }
    return request;
}

} // namespace

std::vector<CommandHelp> commandHelp() {
    Request request;
    Texts texts;
    CLI::App app(kAbout, "pumpwright");
    setUp(app, request, texts);
    std::vector<CommandHelp> all{helpOf(app, {})};
    for (const CLI::App* command : app.get_subcommands({})) {
        all.push_back(helpOf(*command, command->get_name()));
    }
    return all;
}

std::string aboutText() {
    return kAbout;
}

std::string exitStatusText() {
    return kStatuses;
}

tl::expected<Request, Outcome> parseCommandLine(const std::vector<std::string>& arguments) {
    if (auto complaint = misspelledCommand(arguments)) {
        return tl::unexpected(*complaint);
    }
    Request request;
    Texts texts;
    CLI::App app(kAbout, "pumpwright");
    setUp(app, request, texts);
    std::vector<std::string> reversed(arguments.rbegin(), arguments.rend()); // as CLI11 takes them
    try {
        app.parse(reversed);
    } catch (const CLI::CallForVersion& version) {
        return tl::unexpected(Outcome{ExitStatus::Fine, std::string(version.what()) + "\n", ""});
    } catch (const CLI::CallForHelp&) {
        const auto given = app.get_subcommands();
        return tl::unexpected(
            Outcome{ExitStatus::Fine, given.empty() ? app.help() : given.front()->help(), ""});
    } catch (const CLI::ParseError& error) {
        return tl::unexpected(badUse(error.what()));
    }
    return finished(request, app, texts);
}

} // namespace pumpwright
