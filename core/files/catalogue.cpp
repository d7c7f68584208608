#include "core/files/catalogue.h"

#include "core/files/circuit_decode.h"
#include "core/files/json_scan.h"
#include "core/files/nearest_word.h"
#include "core/files/whole_file.h"
#include "core/parts/document_fields.h"
#include "core/units/money.h"
#include "core/units/quoted_text.h"

#include <fmt/core.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <optional>

namespace pumpwright {
namespace {

constexpr int kFormatVersion = 1; // stored: do not renumber
constexpr ParameterSpec kWirePrice{"wirePrice_perMetrePerSquareMillimetre",
                                   "Price of wire, per metre and mm²",
                                   QuantityKind::Money,
                                   0,
                                   0,
                                   1e6};
constexpr ParameterSpec kHosePrice{
    "hosePrice_perMetre", "Price of hose, per metre", QuantityKind::Money, 0, 0, 1e6};
constexpr ParameterSpec kSmallCrimpPrice{
    "smallCrimpPrice", "Price of a crimp terminal up to 6 mm²", QuantityKind::Money, 0, 0, 1e6};
constexpr ParameterSpec kLargeCrimpPrice{
    "largeCrimpPrice", "Price of a crimp terminal above 6 mm²", QuantityKind::Money, 0, 0, 1e6};
constexpr ParameterSpec kSleevePrice{
    "sleevePrice", "Price of a heat-shrink sleeve", QuantityKind::Money, 0, 0, 1e6};

/// Prices of what is no part, and where the catalogue keeps them.
constexpr std::array kPrices{
    std::pair{&kWirePrice, &Catalogue::wirePrice_perMetrePerSquareMillimetre},
    std::pair{&kHosePrice, &Catalogue::hosePrice_perMetre},
    std::pair{&kSmallCrimpPrice, &Catalogue::smallCrimpPrice},
    std::pair{&kLargeCrimpPrice, &Catalogue::largeCrimpPrice},
    std::pair{&kSleevePrice, &Catalogue::sleevePrice},
};

/// What one file says; what it does not say must not undo what an earlier file said.
struct CatalogueFile {
    std::optional<std::string> currency;
    std::array<std::optional<double>, kPrices.size()> prices; ///< in the order of kPrices
    std::vector<CatalogueEntry> entries;
};

bool isReadableVersion(ObjectReader& object) {
    const OrderedJson* version = object.member("pumpwrightCatalogue");
    const double number = version && version->is_number_integer() ? version->get<double>() : 0;
    if (number < 1) {
        object.fault().refuse(
            ErrorCode::NotACatalogue, object.pointer(),
            fmt::format("This is JSON but no catalogue: it needs \"pumpwrightCatalogue\": {}.",
                        kFormatVersion));
    } else if (number > kFormatVersion) {
        object.refuse(
            ErrorCode::NewerVersion, "pumpwrightCatalogue",
            fmt::format("The catalogue has format {}, made for a newer version of this program; this one "
                        "reads up to format {}.",
                        version->dump(), kFormatVersion));
    } else {
        return true;
    }
    return false;
}

template <class Own, class Specs>
void checkKeys(const ObjectReader& entry, std::string_view section, const Own& own, const Specs& specs) {
    std::vector<std::string_view> known;
    for (const auto& spec : specs) {
        known.push_back(spec.key);
    }
    for (const auto& [key, value] : own) {
        if (std::find(known.begin(), known.end(), key) == known.end()) {
            const std::string_view nearest = nearestWord(key, known);
            entry.fault().refuse(
                ErrorCode::UnknownChoice, fmt::format("{}/{}/{}", entry.pointer(), section, pointerStep(key)),
                fmt::format("The kind has no {}. {}", quotedText(key),
                            nearest.empty() ? fmt::format("It has: {}.", fmt::join(known, ", "))
                                            : fmt::format("Is {} meant?", quotedText(nearest))));
        }
    }
}

/// A circuit keeps keys that it does not know for the newer version that wrote them. In a catalogue, which
/// people write by hand, such a key is a slip of the pen.
void checkKeysKnown(const ObjectReader& object, const PartKind& kind, const CatalogueEntry& entry) {
    checkKeys(object, "values", entry.values, kind.parameters());
    checkKeys(object, "choices", entry.choices, kind.choices());
}

CatalogueEntry decodedEntry(const OrderedJson& value, const std::string& pointer, ReadFault& fault) {
    ObjectReader object(value, pointer, fault);
    CatalogueEntry entry;
    entry.id = object.id("id");
    entry.title = object.textOf("title");
    if (const PartKind* kind = readKind(object)) {
        entry.kind = std::string(kind->id());
        readRatings(object, *kind, entry.values, entry.choices);
        checkKeysKnown(object, *kind, entry);
    }
    entry.price = object.number(field::kPrice);
    entry.note = object.text("note");
    return entry;
}

std::optional<double> decodedPrice(ObjectReader& object, const ParameterSpec& spec) {
    return object.member(spec.key) ? std::optional(object.number(spec)) : std::nullopt;
}

CatalogueFile decodedFile(const OrderedJson& tree, ReadFault& fault) {
    ObjectReader object(tree, {}, fault);
    CatalogueFile file;
    if (!isReadableVersion(object)) {
        return file;
    }
    if (object.member("currency")) {
        file.currency = object.text("currency");
        if (!isCurrencyCode(*file.currency)) {
            object.refuse(ErrorCode::UnknownChoice, "currency",
                          fmt::format("{} is no currency code. Give three capital letters, as in \"EUR\".",
                                      quotedText(*file.currency)));
        }
    }
    for (std::size_t i = 0; i < kPrices.size(); ++i) {
        file.prices.at(i) = decodedPrice(object, *kPrices.at(i).first);
    }
    object.forEach("entries", [&](const OrderedJson& value, const std::string& pointer) {
        CatalogueEntry entry = decodedEntry(value, pointer, fault);
        const auto same = [&](const CatalogueEntry& other) { return other.id == entry.id; };
        if (std::any_of(file.entries.begin(), file.entries.end(), same)) {
            fault.refuse(ErrorCode::DuplicateId, pointer + "/id",
                         "The id is used twice. Give each entry an id of its own.");
        }
        file.entries.push_back(std::move(entry));
    });
    return file;
}

/// Adds what a file says; its place in the fault if its currency is another.
std::optional<Error> added(CatalogueFile file, Catalogue& catalogue, bool first) {
    if (file.currency && !first && *file.currency != catalogue.currency) {
        return Error{
            ErrorCode::UnknownChoice,
            fmt::format("The prices are in {}, those of the program's catalogue in {}. Give all in one.",
                        quotedText(*file.currency), catalogue.currency),
            {{}, 0, "/currency"}};
    }
    catalogue.currency = file.currency.value_or(catalogue.currency);
    for (std::size_t i = 0; i < kPrices.size(); ++i) {
        double& kept = catalogue.*(kPrices.at(i).second);
        kept = file.prices.at(i).value_or(kept);
    }
    for (CatalogueEntry& entry : file.entries) {
        const auto same = std::find_if(catalogue.entries.begin(), catalogue.entries.end(),
                                       [&](const CatalogueEntry& other) { return other.id == entry.id; });
        if (same == catalogue.entries.end()) {
            catalogue.entries.push_back(std::move(entry));
        } else {
            *same = std::move(entry);
        }
    }
    return std::nullopt;
}

/// Reads a text and adds it to the catalogue. The catalogue is not changed by a text with a fault.
Result<void> addText(std::string_view text, const std::string& fileName, Catalogue& catalogue, bool first) {
    if (auto fault = jsonFault(text, fileName)) {
        return tl::unexpected(std::move(*fault));
    }
    const OrderedJson tree = OrderedJson::parse(text, nullptr, false);
    ReadFault fault;
    CatalogueFile file = decodedFile(tree, fault);
    std::optional<Error> error = fault.error() ? fault.error() : added(std::move(file), catalogue, first);
    if (error) {
        error->place.file = fileName;
        error->place.line = lineOfPointer(text, error->place.pointer);
        return tl::unexpected(std::move(*error));
    }
    return {};
}

} // namespace

const CatalogueEntry* Catalogue::find(std::string_view id) const {
    const auto found = std::find_if(entries.begin(), entries.end(),
                                    [&](const CatalogueEntry& entry) { return entry.id == id; });
    return found == entries.end() ? nullptr : &*found;
}

Result<Catalogue> parseCatalogue(std::string_view text, const std::string& fileName) {
    Catalogue catalogue;
    return addText(text, fileName, catalogue, true).map([&] { return std::move(catalogue); });
}

Result<Catalogue> readCatalogue(const std::vector<std::filesystem::path>& paths) {
    Catalogue catalogue;
    bool first = true;
    for (const std::filesystem::path& path : paths) {
        std::error_code unknown;
        if (!first && !std::filesystem::exists(path, unknown)) {
            continue;
        }
        const Result<void> read =
            fileText(path, JsonLimits{}.fileBytes).and_then([&](const std::string& text) {
                return addText(text, path.string(), catalogue, first);
            });
        if (!read) {
            return tl::unexpected(read.error());
        }
        first = false;
    }
    return catalogue;
}

PriceList priceListOf(const Catalogue& catalogue) {
    PriceList list{
        {}, catalogue.currency, catalogue.smallCrimpPrice, catalogue.largeCrimpPrice, catalogue.sleevePrice};
    for (const CatalogueEntry& entry : catalogue.entries) {
        list.titles[entry.id] = entry.title;
    }
    return list;
}

Part partFromCatalogue(const CatalogueEntry& entry, std::string reference, GridPoint at) {
    Part part;
    part.kind = entry.kind;
    part.reference = std::move(reference);
    part.catalogue = entry.id;
    part.note = entry.note;
    part.price = entry.price;
    part.at = at;
    part.values = entry.values;
    part.choices = entry.choices;
    return part;
}

} // namespace pumpwright
