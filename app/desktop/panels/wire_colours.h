#pragma once

#include <QString>

#include <vector>

namespace pumpwright {

/// One colour of insulation by its letters after IEC 60757.
struct WireColourName {
    QString letters; ///< "RD"
    QString name;    ///< "red"
};

/// The colours that a builder can buy, in the order of the standard's table.
std::vector<WireColourName> wireColourNames();

/// Empty where the text is one or two colours ("RD", "RDBU"), else why it is not.
QString wireColourRefusal(const QString& text);

} // namespace pumpwright
