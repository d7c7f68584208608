#include "app/desktop/panels/wire_colours.h"

#include <QCoreApplication>

#include <algorithm>

namespace pumpwright {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("pumpwright", text);
}

} // namespace

std::vector<WireColourName> wireColourNames() {
    // IEC 60757
    return {
        {QStringLiteral("BK"), tr("black")},  {QStringLiteral("BN"), tr("brown")},
        {QStringLiteral("RD"), tr("red")},    {QStringLiteral("OG"), tr("orange")},
        {QStringLiteral("YE"), tr("yellow")}, {QStringLiteral("GN"), tr("green")},
        {QStringLiteral("BU"), tr("blue")},   {QStringLiteral("VT"), tr("violet")},
        {QStringLiteral("GY"), tr("grey")},   {QStringLiteral("WH"), tr("white")},
        {QStringLiteral("PK"), tr("pink")},   {QStringLiteral("GNYE"), tr("green and yellow")},
    };
}

QString wireColourRefusal(const QString& text) {
    const auto names = wireColourNames();
    const auto known = [&](QStringView letters) {
        return std::any_of(names.begin(), names.end(),
                           [&](const WireColourName& one) { return one.letters == letters; });
    };
    const bool single = text.size() == 2 && known(text);
    const bool pair =
        text.size() == 4 && known(QStringView(text).left(2)) && known(QStringView(text).right(2));
    if (single || pair) {
        return {};
    }
    return tr("“%1” is no colour. Use the letters of IEC 60757, one or two colours: RD, RDBU.").arg(text);
}

} // namespace pumpwright
