#include "app/desktop/theme.h"

#include <QApplication>
#include <QStyle>

namespace pumpwright {
namespace {

struct Shades {
    QColor window;
    QColor base;
    QColor alternate;
    QColor button;
    QColor text;
    QColor quietText;
    QColor highlight;
    QColor highlightedText;
    QColor link;
    QColor visited;
};

const Shades kLight{"#f2f2f0", "#ffffff", "#f6f6f4", "#e9e9e6", "#1c1c1c",
                    "#595959", "#1f5fae", "#ffffff", "#1f5fae", "#6b3fa0"};
const Shades kDark{"#2a2c2e", "#1e2022", "#26282a", "#36393c", "#ececec",
                   "#a9adb0", "#2f6fbf", "#ffffff", "#8fbcf5", "#c3a6f0"};

QPalette paletteOf(const Shades& shades) {
    QPalette palette(shades.button, shades.window);
    for (const auto role :
         {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText}) {
        palette.setColor(role, shades.text);
        palette.setColor(QPalette::Disabled, role, shades.quietText);
    }
    palette.setColor(QPalette::Base, shades.base);
    palette.setColor(QPalette::AlternateBase, shades.alternate);
    palette.setColor(QPalette::ToolTipBase, shades.base);
    palette.setColor(QPalette::PlaceholderText, shades.quietText);
    palette.setColor(QPalette::Highlight, shades.highlight);
    palette.setColor(QPalette::HighlightedText, shades.highlightedText);
    palette.setColor(QPalette::Link, shades.link);
    palette.setColor(QPalette::LinkVisited, shades.visited);
    return palette;
}

} // namespace

Theme themeNamed(const QString& name) {
    if (name == QLatin1String("light")) {
        return Theme::Light;
    }
    return name == QLatin1String("dark") ? Theme::Dark : Theme::LikeDesktop;
}

QPalette themePalette(Theme theme) {
    switch (theme) {
    case Theme::Light:
        return paletteOf(kLight);
    case Theme::Dark:
        return paletteOf(kDark);
    case Theme::LikeDesktop:
        break;
    }
    return QApplication::style()->standardPalette();
}

void showTheme(Theme theme) {
    // An empty palette makes Qt follow the desktop again.
    QApplication::setPalette(theme == Theme::LikeDesktop ? QPalette() : themePalette(theme));
}

} // namespace pumpwright
