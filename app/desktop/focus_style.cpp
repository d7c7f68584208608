#include "app/desktop/focus_style.h"

#include "app/desktop/circuit/palette.h"

#include <QAbstractScrollArea>
#include <QPainter>
#include <QStyleOption>
#include <QWidget>

namespace pumpwright {
namespace {

void drawLine(const QStyleOption& option, QPainter& painter) {
    constexpr double kHalf = FocusStyle::kLine_px / 2.0;
    const QPen pen(focusColour(option.palette), FocusStyle::kLine_px, Qt::SolidLine, Qt::SquareCap,
                   Qt::MiterJoin);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    // Within the outline that many controls have, so that both its pixels are seen.
    constexpr double kInside = 1 + kHalf;
    painter.drawRect(QRectF(option.rect).adjusted(kInside, kInside, -kInside, -kInside));
    painter.restore();
}

bool hasFocus(const QStyleOption& option) {
    return option.state.testFlag(QStyle::State_HasFocus) && option.state.testFlag(QStyle::State_Enabled);
}

} // namespace

QColor focusColour(const QPalette& palette) {
    const auto standsOut = [&](const QColor& colour) {
        return contrastRatio(colour, palette.color(QPalette::Window)) >= FocusStyle::kContrast &&
               contrastRatio(colour, palette.color(QPalette::Base)) >= FocusStyle::kContrast;
    };
    const QColor highlight = palette.color(QPalette::Highlight);
    return standsOut(highlight) ? highlight : palette.color(QPalette::WindowText);
}

FocusStyle::FocusStyle() : QProxyStyle(QStringLiteral("fusion")) {}

void FocusStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const {
    if (element == PE_FrameFocusRect) {
        drawLine(*option, *painter);
        return;
    }
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    const bool isField =
        element == PE_PanelLineEdit && qobject_cast<const QAbstractScrollArea*>(widget) == nullptr;
    if (isField && hasFocus(*option)) {
        drawLine(*option, *painter);
    }
}

void FocusStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                    QPainter* painter, const QWidget* widget) const {
    QProxyStyle::drawComplexControl(control, option, painter, widget);
    if ((control == CC_ComboBox || control == CC_SpinBox || control == CC_ToolButton ||
         control == CC_Slider) &&
        hasFocus(*option)) {
        drawLine(*option, *painter);
    }
}

void FocusStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                             const QWidget* widget) const {
    QProxyStyle::drawControl(element, option, painter, widget);
    // Lists, tables and other areas that scroll; buttons; tabs.
    if ((element == CE_ShapedFrame || element == CE_PushButton || element == CE_TabBarTabLabel) &&
        hasFocus(*option)) {
        drawLine(*option, *painter);
    }
}

} // namespace pumpwright
