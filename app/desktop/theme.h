#pragma once

#include <QPalette>
#include <QString>

namespace pumpwright {

enum class Theme { LikeDesktop, Light, Dark };

/// "light", "dark", or anything else for the desktop's.
Theme themeNamed(const QString& name);

/// The window's colours; LikeDesktop gives those that the desktop asks for.
QPalette themePalette(Theme theme);

/// Gives every window of the program these colours, now and until the next call.
void showTheme(Theme theme);

} // namespace pumpwright
