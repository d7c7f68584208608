#pragma once

#include "tests/support/catch.h"

#include <QAbstractButton>
#include <QGuiApplication>
#include <QLabel>
#include <QLayout>
#include <QTranslator>

namespace pumpwright {

/// English that is forty percent longer, with letters above and below the usual height.
class LongWinded final : public QTranslator {
public:
    QString translate(const char*, const char* source, const char*, int n) const override {
        QString text = QString::fromUtf8(source);
        if (n >= 0) {
            text.replace(QStringLiteral("%n"), QString::number(n));
        }
        for (auto more = (text.size() * 2 + 4) / 5; more > 0; more -= 6) {
            text += QStringLiteral(" Ågjpq").left(more + 1);
        }
        return text;
    }
    bool isEmpty() const override { return false; }
};

/// As long as it lives, texts are longer and written from the right.
class LongWindedSpell {
public:
    LongWindedSpell() {
        QCoreApplication::installTranslator(&m_longWinded);
        QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    }
    ~LongWindedSpell() {
        QGuiApplication::setLayoutDirection(Qt::LeftToRight);
        QCoreApplication::removeTranslator(&m_longWinded);
    }
    LongWindedSpell(const LongWindedSpell&) = delete;
    LongWindedSpell& operator=(const LongWindedSpell&) = delete;

private:
    LongWinded m_longWinded;
};

/// Nothing covers its sides.
inline bool isShownInFull(const QWidget& widget) {
    return widget.visibleRegion().boundingRect().width() >= widget.width() - 1;
}

/// Whether the widget has the room that its text asks for, or breaks its lines, and nothing covers its sides.
inline bool hasRoom(const QWidget& widget) {
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
        const bool fits = label->wordWrap() || label->width() >= label->minimumSizeHint().width();
        return label->text().isEmpty() || (fits && isShownInFull(widget));
    }
    const auto* button = qobject_cast<const QAbstractButton*>(&widget);
    return button == nullptr || button->text().isEmpty() ||
           (button->width() >= button->minimumSizeHint().width() && isShownInFull(widget));
}

/// What the parent lays out lies inside it and side by side.
inline void checkSideBySide(const QWidget& parent) {
    QList<const QWidget*> children;
    for (const QWidget* child : parent.findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
        if (child->isVisibleTo(&parent) && parent.layout()->indexOf(child) >= 0) {
            children << child;
        }
    }
    for (qsizetype i = 0; i < children.size(); ++i) {
        INFO(parent.metaObject()->className() << ": " << children[i]->metaObject()->className() << " "
                                              << children[i]->accessibleName().toStdString());
        CHECK(parent.rect().contains(children[i]->geometry()));
        for (qsizetype j = i + 1; j < children.size(); ++j) {
            CHECK_FALSE(children[i]->geometry().intersects(children[j]->geometry()));
        }
    }
}

/// All that is seen of a window has room for its text, and nothing lies on anything else. Returns how many
/// widgets were looked at.
inline int checkRoom(const QWidget& window) {
    int looked = 0;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisibleTo(&window) || widget->visibleRegion().boundingRect().width() <= 0) {
            continue;
        }
        ++looked;
        const auto* label = qobject_cast<const QLabel*>(widget);
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        INFO(widget->metaObject()->className()
             << " " << widget->accessibleName().toStdString() << " "
             << (label    ? label->text()
                 : button ? button->text()
                          : QString())
                    .toStdString()
             << " " << widget->width() << " of " << widget->minimumSizeHint().width());
        CHECK(hasRoom(*widget));
        if (widget->layout() != nullptr) {
            checkSideBySide(*widget);
        }
    }
    return looked;
}

} // namespace pumpwright
