#pragma once

#include <QIcon>
#include <QString>

namespace pumpwright {

/// One of our own icons in the text colour of the palette, so that it shows on light and dark ground and at
/// any scale. The name is that of the file in resources/icons.
QIcon ownIcon(const QString& name);

} // namespace pumpwright
