#include "app/desktop/kept_fit.h"

#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/document/document.h"

#include <QEvent>

namespace pumpwright {

KeptFit::KeptFit(CircuitView& view, Document& document, QObject* parent) : QObject(parent), m_view(view) {
    view.installEventFilter(this);
    // The view fits another circuit by itself; it is asked afterwards what that came to.
    connect(
        &document, &Document::changed, this,
        [this](const ChangedObjects& objects) {
            if (objects.all) {
                m_fittedZoom = m_view.zoom();
            }
        },
        Qt::QueuedConnection);
}

void KeptFit::fit() {
    m_view.fit();
    m_fittedZoom = m_view.zoom();
}

bool KeptFit::eventFilter(QObject* watched, QEvent* event) {
    if (watched == &m_view && event->type() == QEvent::Resize && qFuzzyCompare(m_view.zoom(), m_fittedZoom)) {
        // The view has to take its new size before.
        QMetaObject::invokeMethod(this, &KeptFit::fit, Qt::QueuedConnection);
    }
    return QObject::eventFilter(watched, event);
}

} // namespace pumpwright
