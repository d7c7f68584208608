#pragma once

#include <QProxyStyle>

namespace pumpwright {

/// The usual style, with a line two pixels thick round whatever the keys go to. The Circuit draws its own.
class FocusStyle final : public QProxyStyle {
public:
    /// Thickness of the line, and what it must reach against the colours of the window.
    static constexpr int kLine_px = 2;
    static constexpr double kContrast = 3.0; ///< WCAG 2.1, success criterion 1.4.11

    FocusStyle();

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget) const override;
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
};

/// The palette's highlight where that stands out from window and fields, else its text.
QColor focusColour(const QPalette& palette);

} // namespace pumpwright
