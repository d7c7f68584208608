#include "app/console/drawing/offscreen.h"

namespace pumpwright {

Offscreen::Offscreen() {
    if (QCoreApplication::instance() == nullptr) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        if (!qEnvironmentVariableIsSet("XDG_RUNTIME_DIR")) {
            qputenv("XDG_RUNTIME_DIR", m_runtime.path().toUtf8());
        }
        m_application = std::make_unique<QGuiApplication>(m_argumentCount, m_arguments);
    }
}

} // namespace pumpwright
