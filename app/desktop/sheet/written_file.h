#pragma once

#include "core/units/result.h"

#include <QByteArray>
#include <QString>

namespace pumpwright {

/// All or nothing. `what` begins the message of a failure: "The drive chart".
[[nodiscard]] Result<void> writeWholeFile(const QString& path, const QByteArray& bytes, const QString& what);

/// The error that a file at this path can't be written.
tl::unexpected<Error> unwritableFile(const QString& path, const QString& text);

} // namespace pumpwright
