import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./app.tsx";
import { startBook } from "./jobs/start-book.ts";
import "./styles.css";

const place = document.getElementById("root");
if (place !== null) {
  const start = await startBook();
  createRoot(place).render(
    <StrictMode>
      <App start={start} />
    </StrictMode>,
  );
}
