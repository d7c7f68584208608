#pragma once

#include <QString>

namespace pumpwright {

/// Opens the window on the file, or on an empty circuit where there is none; returns when it is closed.
int runWindow(int argc, char** argv, const QString& file);

} // namespace pumpwright
