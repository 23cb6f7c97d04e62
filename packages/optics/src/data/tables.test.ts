// Tables do not drift: each is the file that was checked, and each module is what its table gives.
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { column, readTable, TABLES, trapezoid } from "@sunfathom/fixtures/tables";
import { describe, expect, it } from "vitest";
import { CIE_1931_OBSERVER } from "./cie-1931-observer.js";
import { JERLOV_1976 } from "./jerlov-1976.js";

const SHA_256: Record<string, string> = {
  "NOTICE-sensor.txt": "a4f976453a2a77dc589b3d221f1c94de3276ead362e215442aaf2f9457f03b24",
  "astm_g173_03.csv": "5b4e6799531fb1e08612da006a6ef4b0c1f11141312afd35fe4ee93ed9997072",
  "austin_petzold_1986_kd_types.csv": "ddf404d7264135de25999df36e458ebcdb0d4d5804ce20cde3c09a937bbff533",
  "austin_petzold_1986_model.csv": "1d5613024cf37bd2b28770d510456b1ec5dee0a4d155215bf4d5caf1f4ba9111",
  "bottom_reflectance.csv": "99d00d0af6795389d632a8f2c0923ed1e1111a9a29572d32f943c285e8021b96",
  "chart24_reflectance_ohta1997.csv": "e37888247ff264437825a361d31b5806ff8f759f9e3dad05bc97dedd925e918d",
  "cie13_test_colour_samples.csv": "b6429cfb64aea407065422603d7f6b18afdab44341afc758bf31c932ab4305ea",
  "cie_1931_2deg_cmf_1nm.csv": "0be7f3de8719d856f945dad444afdfad3c78b4a36e91cbfad74d590298820b13",
  "cie_daylight_basis.csv": "ef4c8bcd42758698f06c6e5f415561d44a725cbaf455f6062980559b9aa0b00b",
  "cie_illuminants_5nm.csv": "22b82b71d8f9229331b4acadfe57d950ee8b418bd16fd10ba16b4b472b54cd05",
  "cie_led_illuminants_5nm.csv": "2ca012d6f1f57b25505c876446d8f5bbac06d0251310296a829684038a7d4785",
  "cie_luminous_efficiency_1nm.csv": "b9973ce11234703b14535302ac63aa22bc69b328973fb3ffbb2ffeb77ccb9c6d",
  "jerlov_1976_kd.csv": "15c172c3cff89d7a98ac6f1759e15253118fea2808a5b5ff6fa432caa9e3edd6",
  "morel_maritorena_2001_kd.csv": "106ee5999723466b173c78fd4631f1cbdf42aafc77d5b3f9f7c8b545c486a23c",
  "nrel_spa_worked_example.csv": "e5c3d1a40f564ec6e817a05093c87f0f15c33d628ad5f00f0801962cbbf647e6",
  "petzold_1972_stations_530nm.csv": "1ca98255ff7bbd8ff9d418037763c19feb354df4e4ed7603155dbce7f841c512",
  "robertson_1968_isotemperature_lines.csv": "adb309e5dc61c0cdbfeb9fa032d58e96e37ac451a29348dadab1c7194b41cf92",
  "seawater_refractive_index.csv": "7f89d8335bd9e4664fcf251ea66fcf39c51a2ebbcf475359af534dca4e6d239d",
  "seawater_scattering.csv": "a1195c6dca27dc3d882975450b4369f3fc25e8ed959503c124451d4c00dd4c1d",
  "sensor_rgb_mean.csv": "9f8f448868dd43a5b86cd6349ba100ea3cc3850b87b146d49e0c6f9860cdb0c2",
  "sharma_2005_ciede2000.csv": "eef2ae59c8d485bcd5de573efc813a660f3a572e99dbc04bbd972659e41a274e",
  "spctrl2_coefficients.csv": "22eae2995c855aba55478ec3b4a04ff09d1ffc18d51f1edb5c99737f3ef51a42",
  "spctrl2_worked_example.csv": "ed0f444a21ec3748a9e5d7efe91db0cf089abb39c27c8edab748859f0259d21f",
  "water_absorption_pope_fry_1997.csv": "322e40f2b6ff2f296e5193d201cf0861c407d5594d91dd3715b5be5f6d19c12f",
  "water_absorption_wopp_v3.csv": "bfb0f1cc820c28423b6a42be19d2ec78183290561e793b255338d972e0877d69",
  "water_smith_baker_1981.csv": "efeecc94e0b1b2718844a32a95703a50542074957b2f915fbe5925f25fee644a",
  "skin_reflectance.csv": "ee9bcfa0cbe96d795b984f2a545ea6655faa843cf66fe3da8220c4087a048de3",
  "warren_brandt_2008_ice.csv":
    "db5c9143019bf1b6450b3934227ffd09fb2c1a2622356120db73c78307d5752d",
  "williamson_hollins_2022_measured_iop.csv": "c3177c3b605cecd6295fb462d28d83e811bb5609a80280529eb8ca5f6326bda7",
};

describe("published tables", () => {
  it("are, byte for byte, the ones that were checked against their publications", () => {
    const found = Object.fromEntries(
      readdirSync(TABLES)
        .filter((file) => file !== "SOURCES.md")
        .map((file) => {
          const text = readFileSync(new URL(file, TABLES), "utf8").replaceAll("\r\n", "\n");
          return [file, createHash("sha256").update(text).digest("hex")];
        }),
    );
    expect(found).toEqual(SHA_256);
  });

  it("each have a line in SOURCES.md with the publication", () => {
    const lines = readFileSync(new URL("SOURCES.md", TABLES), "utf8").split("\n");
    for (const file of Object.keys(SHA_256)) {
      const line = lines.find((text) => text.includes(`\`${file}\``));
      expect(line, file).toMatch(file.endsWith(".csv") ? /^\| `[^|]+\|[^|]+\|[^|]*\w{3}[^|]*\|[^|]+\| [AB] +\|$/ : /./);
    }
  });

  it("give the modules beside this test, number by number", () => {
    const script = fileURLToPath(new URL("../../scripts/write-table-modules.mjs", import.meta.url));
    const said = execFileSync(process.execPath, [script, "--check"], { encoding: "utf8" });
    const modules = readdirSync(new URL(".", import.meta.url)).filter((file) => !file.endsWith(".test.ts"));
    expect(said).toContain(`${modules.length} table modules match their tables`);
  });

  it("bring every row of Jerlov 1976, Table XXVII, into its module (read here by another way than the script's)", () => {
    const rows = readTable("jerlov_1976_kd");
    expect(rows.length).toBe(150);
    for (const row of rows) {
      const at = JERLOV_1976.wavelength_nm.indexOf(Number(row["wavelength_nm"]));
      const { wavelength_nm: _, ...types } = JERLOV_1976;
      expect(Object.entries(types).find(([type]) => type === row["water_type"])?.[1][at]).toBe(
        Number(row["Kd_per_m"]),
      );
    }
  });
});

describe("the CIE 1931 observer", () => {
  const cmf = readTable("cie_1931_2deg_cmf_1nm");

  it("sums to 106.8655, 106.8569 and 106.8923 over 360 to 830 nm at 1 nm (CIE 15, ISO/CIE 11664-1)", () => {
    const sum = (key: string) => column(cmf, key).reduce((s, v) => s + v, 0);
    expect(sum("x_bar")).toBeCloseTo(106.8655, 4);
    expect(sum("y_bar")).toBeCloseTo(106.8569, 4);
    expect(sum("z_bar")).toBeCloseTo(106.8923, 4);
  });

  it("has y_bar equal to V(lambda) of CIE 1924 at every nanometre, to the six digits that both print", () => {
    const V = column(readTable("cie_luminous_efficiency_1nm"), "V_photopic_1924");
    column(cmf, "y_bar").forEach((y, i) => {
      expect(Math.abs(y / V[i] - 1)).toBeLessThan(1e-6);
    });
  });

  it("keeps its area within 5e-4 on the 5 nm grid from 380 to 780 nm (CIE 15 allows 5 nm)", () => {
    for (const key of ["x_bar", "y_bar", "z_bar"] as const) {
      const fine = trapezoid(column(cmf, "wavelength_nm"), column(cmf, key));
      const coarse = trapezoid(CIE_1931_OBSERVER.wavelength_nm, CIE_1931_OBSERVER[key]);
      expect(Math.abs(coarse / fine - 1)).toBeLessThan(5e-4);
    }
  });
});
