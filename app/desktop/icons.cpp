#include "app/desktop/icons.h"

#include <QApplication>
#include <QFile>
#include <QIconEngine>
#include <QPainter>
#include <QPalette>
#include <QSvgRenderer>

/// The library is static: without this call the linker leaves the icons out. Qt wants it outside namespaces.
static void loadIcons() {
    Q_INIT_RESOURCE(icons);
}

namespace pumpwright {
namespace {

QByteArray svgText(const QString& name) {
    QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
    const bool opened = file.open(QIODevice::ReadOnly);
    Q_ASSERT_X(opened, "ownIcon", "every icon that is asked for is built in");
    return opened ? file.readAll() : QByteArray();
}

/// Draws an SVG whose lines have the colour "currentColor" in the colour that text has now.
class InkEngine final : public QIconEngine {
public:
    explicit InkEngine(QByteArray svg) : m_svg(std::move(svg)) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
        const auto group = mode == QIcon::Disabled ? QPalette::Disabled : QPalette::Active;
        const QColor ink = QApplication::palette().color(group, QPalette::ButtonText);
        QByteArray inked = m_svg;
        inked.replace("currentColor", ink.name().toLatin1());
        QSvgRenderer(inked).render(painter, rect);
    }

    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
        QPixmap pixmap(size);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        paint(&painter, QRect(QPoint(), size), mode, state);
        return pixmap;
    }

    QIconEngine* clone() const override { return new InkEngine(*this); }

private:
    QByteArray m_svg;
};

} // namespace

QIcon ownIcon(const QString& name) {
    loadIcons();
    return QIcon(new InkEngine(svgText(name)));
}

} // namespace pumpwright
