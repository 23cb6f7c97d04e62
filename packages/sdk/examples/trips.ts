// A trip page: the Quillbarrow Packet shows, for a week, which hours of which site still have red.
import { Sunfathom, type SunfathomOptions } from "@sunfathom/sdk";

const sites = [
  { name: "Gannet Stair", visibility_m: 25, water_hue: "blue", depth_m: 12 },
  { name: "Old Mole", visibility_m: 12, water_hue: "blue_green", depth_m: 8 },
  { name: "Peat Sound", visibility_m: 8, water_hue: "green", depth_m: 6 },
  { name: "Far Ledge", visibility_m: 30, water_hue: "blue", depth_m: 20 },
] as const;
const days = [7, 8, 9, 10, 11, 12, 13].map((day) => `2026-12-${String(day).padStart(2, "0")}`);
const hours = [7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17].map((hour) => `${String(hour).padStart(2, "0")}:00`);

export async function week(options: SunfathomOptions): Promise<string[]> {
  const client = new Sunfathom({ ...options, concurrency: 8 });
  const asked = days.flatMap((day) => sites.flatMap((site) => hours.map((hour) => ({ day, site, hour }))));
  return Promise.all(
    asked.map(async ({ day, site: { name, ...site }, hour }) => {
      const { depths } = await client.calculations.attenuation(
        {
          ...site,
          latitude_deg: -47.3,
          longitude_deg: -128.4,
          local_time: `${day}T${hour}`,
          time_zone: "Etc/GMT+9",
        },
        { fields: ["depths.red_left_percent.likely"] },
      );
      return `${day} ${hour} ${name}: ${depths[0]?.red_left_percent.likely} % of red left`;
    }),
  );
}
